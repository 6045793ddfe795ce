package undercroft.cellar;

import java.time.Instant;
import java.util.OptionalDouble;
import undercroft.quantity.Check;

/**
 * Bottles promised for a time.
 *
 * @param placeId where they are chilled
 * @param glassCelsius wanted in the glass; empty for what is usual with the kind of beer
 */
public record Pour(
        String id, String batchId, int bottles, Instant at, String placeId, OptionalDouble glassCelsius, String note) {
    public Pour {
        Check.id("id", id);
        Check.id("batch", batchId);
        Check.within("bottles", bottles, 1, 10_000);
        Check.id("place", placeId);
        if (glassCelsius.isPresent()) {
            Check.within("glassCelsius", glassCelsius.getAsDouble(), 0, 25, "°C");
        }
        note = note == null ? "" : note.strip();
    }
}
