package undercroft.listen;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import undercroft.quantity.InvalidInput;

/**
 * How it stands with a place's live sensor.
 *
 * @param heard when its newest reading came; empty before the first
 * @param taken readings kept
 * @param leftOut messages that were not
 * @param faults what a person should know of it
 */
public record SensorState(Optional<Instant> heard, long taken, long leftOut, List<InvalidInput> faults) {
    public SensorState {
        faults = List.copyOf(faults);
    }
}
