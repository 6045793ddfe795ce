package undercroft.outlook.lot;

import java.util.List;
import undercroft.series.Band;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/**
 * Temperature of the bottles, °C.
 *
 * @param coverage share of the time since capping with measured temperatures, 0 to 1
 * @param air what was logged where the lot stood
 * @param bottles what the bottles felt and will feel; wide where it is not known
 * @param gaps stretches without a log
 */
public record TemperatureOutlook(
        double nowCelsius,
        double meanKineticCelsius,
        double warmestCelsius,
        double coverage,
        TimeSeries air,
        Band bottles,
        List<Span> gaps) {}
