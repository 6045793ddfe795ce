package undercroft.cellar;

import java.time.Instant;
import java.util.Optional;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;

/**
 * What a person said to a line of To do.
 *
 * @param taskKey names the task, the same each time the shelf is looked at
 * @param until from then on the line is shown again; empty for good
 */
public record TaskNote(String taskKey, What what, Optional<Instant> until) {
    public TaskNote {
        taskKey = Check.text("task", taskKey);
    }

    /** Whether the line stays away at an instant. */
    public boolean holdsAt(Instant instant) {
        return until.map(end -> end.isAfter(instant)).orElse(true);
    }

    /** What was said. */
    public enum What implements Listed {
        DONE("done"),
        POSTPONED("postponed"),
        DISMISSED("dismissed");

        private final String id;

        What(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }
}
