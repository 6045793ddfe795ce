package undercroft.cellar;

import java.time.Instant;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;

/** Bottles that left a lot. */
public record Draw(Instant at, int count, Fate fate, String note) {
    public Draw {
        Check.within("count", count, 1, 10_000);
        note = note == null ? "" : note.strip();
    }

    /** What became of drawn bottles. */
    public enum Fate implements Listed {
        OPENED("opened", "opened"),
        GIVEN_AWAY("given-away", "given away"),
        BROKEN("broken", "broken"),
        BURST("burst", "burst");

        private final String id;
        private final String label;

        Fate(String id, String label) {
            this.id = id;
            this.label = label;
        }

        @Override
        public String id() {
            return id;
        }

        @Override
        public String label() {
            return label;
        }
    }
}
