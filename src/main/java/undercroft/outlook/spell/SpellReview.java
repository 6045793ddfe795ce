package undercroft.outlook.spell;

import java.time.Instant;
import java.util.List;
import undercroft.cellar.Place;

/**
 * A warm or cold spell of a place, and what it did to the bottles that stood there.
 *
 * @param certain false where readings are missing in it, so that it may have been otherwise
 */
public record SpellReview(
        Place place,
        Instant from,
        Instant until,
        double peakCelsius,
        boolean warm,
        boolean certain,
        List<SpellImpact> impacts) {
    public SpellReview {
        impacts = List.copyOf(impacts);
    }

    /** What to do about bottles after a spell; the first things first. */
    public enum Advice {
        /** They may still be over their limit: nobody touches them before they are cold. */
        COOL_BEFORE_TOUCHING,
        /** They may have been over it and have borne much: careful hands, and first in turn. */
        DRINK_FIRST,
        /** They came near: cooler from now on. */
        KEEP_COOLER,
        /** They may have frozen: look at the caps before moving them. */
        LOOK_FOR_LIFTED_CAPS,
        /** They may be handled as usual. */
        AS_USUAL,
        /** No bottle is left. */
        GONE
    }
}
