package undercroft.cellar;

import java.time.Instant;
import java.util.Optional;
import undercroft.quantity.Check;

/**
 * How far a step of bottling day is.
 *
 * @param timerFrom when its timer was started, if it was
 */
public record StepState(String id, boolean done, Optional<Instant> timerFrom) {
    public StepState {
        Check.id("id", id);
    }
}
