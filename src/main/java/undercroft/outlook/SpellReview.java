package undercroft.outlook;

import java.time.Instant;
import java.util.List;
import undercroft.cellar.Place;
import undercroft.quantity.Interval;

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
        List<Impact> impacts) {
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

    /**
     * What a spell did to a batch, told for its hardest pressed lot.
     *
     * @param since from when that lot was in the spell
     * @param until until when it was
     * @param hoursOverWorking hours in which the 95 % pressure was above the limit
     * @param memoryBeforeBar all pressure borne until the spell as one that acts for 60 seconds
     * @param memoryAfterBar the same after it
     * @param mayHaveBeenFull whether warmth may have swollen the beer until it filled the bottle
     * @param shelfDaysCost days at 20 °C used beyond what the usual temperature would have used
     * @param carbonationDaysGained reference days (21 °C) of conditioning gained
     * @param verdict in words, with what to do first
     */
    public record Impact(
            String batchId,
            String batchName,
            String lotId,
            Instant since,
            Instant until,
            Interval peakBarGauge,
            double hoursOverWorking,
            Interval memoryBeforeBar,
            Interval memoryAfterBar,
            boolean mayHaveBeenFull,
            double shelfDaysCost,
            double carbonationDaysGained,
            Alert alert,
            Advice advice,
            String verdict) {}
}
