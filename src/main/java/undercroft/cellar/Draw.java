package undercroft.cellar;

import java.time.Instant;
import java.util.Optional;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * Bottles that left a lot.
 *
 * @param cause of bottles that burst, once the user was asked; empty before, and for any other fate
 */
public record Draw(Instant at, int count, Fate fate, String note, Optional<BurstCause> cause) {
    public Draw {
        Check.within("count", count, 1, 10_000);
        note = note == null ? "" : note.strip();
        if (cause.isPresent() && fate != Fate.BURST) {
            throw new InvalidInput("cause", "cellar.fault.cause");
        }
    }

    /** A draw whose cause, if it has one, was not asked yet. */
    public Draw(Instant at, int count, Fate fate, String note) {
        this(at, count, fate, note, Optional.empty());
    }

    public Draw withCause(BurstCause told) {
        return new Draw(at, count, fate, note, Optional.of(told));
    }

    /** What became of drawn bottles. */
    public enum Fate implements Listed {
        OPENED("opened"),
        GIVEN_AWAY("given-away"),
        BROKEN("broken"),
        BURST("burst");

        private final String id;

        Fate(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }
}
