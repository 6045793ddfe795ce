package undercroft.outlook.lot;

import java.util.List;
import undercroft.series.Band;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/**
 * Temperature of the bottles, °C.
 *
 * @param coverage share of the time since capping with measured temperatures, 0 to 1
 * @param airByStay what was logged where the lot stood, a series a stay
 * @param bottles what the bottles felt and will feel; wide where it is not known
 * @param gaps stretches without a log
 */
public record TemperatureOutlook(
        double nowCelsius,
        double meanKineticCelsius,
        double warmestCelsius,
        double coverage,
        List<TimeSeries> airByStay,
        Band bottles,
        List<Span> gaps) {
    public TemperatureOutlook {
        airByStay = List.copyOf(airByStay);
        gaps = List.copyOf(gaps);
    }

    /** What was logged where the lot stood, put together: for a picture or a table, not to be kept. */
    public TimeSeries air() {
        return airByStay.stream().reduce(TimeSeries.empty(), TimeSeries::mergedWith);
    }
}
