package undercroft.outlook.lot;

import undercroft.calc.light.LightBand;
import undercroft.quantity.Interval;
import undercroft.series.TimeSeries;

/**
 * Light the bottles have had: 1 is the dose at which a taster just notices.
 *
 * @param perDay dose a day where they stand now (median)
 * @param trajectory the dose adding up, a point a day (median)
 */
public record LightOutlook(Interval dose, double perDay, TimeSeries trajectory) {
    /** What the median dose means for the taste. */
    public LightBand band() {
        return LightBand.of(dose.median());
    }
}
