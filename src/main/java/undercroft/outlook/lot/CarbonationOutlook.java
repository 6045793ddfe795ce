package undercroft.outlook.lot;

import undercroft.quantity.Interval;
import undercroft.series.Band;

/**
 * Carbon dioxide in the bottles, volumes.
 *
 * @param residual what the beer held before priming
 * @param atPresent now
 * @param atEnd when everything fermentable is gone
 * @param fractionDone share of the coming carbonation that has formed, 0 to 1
 * @param trajectory from capping to the horizon
 */
public record CarbonationOutlook(
        Interval residual, Interval atPresent, Interval atEnd, Interval fractionDone, Band trajectory) {
    /** From this share of the sugar on a beer counts as carbonated. */
    static final double DONE = 0.95;

    /** Whether nearly all of the coming carbonation has formed, at the median. */
    public boolean isDone() {
        return fractionDone.median() >= DONE;
    }
}
