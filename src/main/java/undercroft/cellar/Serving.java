package undercroft.cellar;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;

/**
 * Bottles promised for a time.
 *
 * @param placeId where they are chilled; empty for somewhere that is no place of the cellar, such as a kitchen fridge
 * @param coolingMedium what kind of cold place that is; a bucket of ice and water or a freezer may stand anywhere
 * @param glassCelsius wanted in the glass; empty for what is usual with the kind of beer
 */
public record Serving(
        String id,
        String batchId,
        int bottles,
        Instant at,
        Optional<String> placeId,
        CoolingMedium coolingMedium,
        OptionalDouble glassCelsius,
        String note)
        implements Listed {
    public Serving {
        Check.id("id", id);
        Check.id("batch", batchId);
        Check.within("bottles", bottles, 1, 10_000);
        placeId.ifPresent(place -> Check.id("place", place));
        if (glassCelsius.isPresent()) {
            Check.within("glassCelsius", glassCelsius.getAsDouble(), 0, 25, "°C");
        }
        note = note == null ? "" : note.strip();
    }

    /** Chilled in a place of the cellar. */
    public Serving(
            String id,
            String batchId,
            int bottles,
            Instant at,
            String placeId,
            CoolingMedium coolingMedium,
            OptionalDouble glassCelsius,
            String note) {
        this(id, batchId, bottles, at, Optional.of(placeId), coolingMedium, glassCelsius, note);
    }

    /** Chilled in a place that is a fridge with still air. */
    public Serving(
            String id,
            String batchId,
            int bottles,
            Instant at,
            String placeId,
            OptionalDouble glassCelsius,
            String note) {
        this(id, batchId, bottles, at, placeId, CoolingMedium.STILL_FRIDGE, glassCelsius, note);
    }

    public boolean isChilledIn(String place) {
        return placeId.filter(place::equals).isPresent();
    }

    @Override
    public String label() {
        return id;
    }
}
