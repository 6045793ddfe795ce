package undercroft.outlook.climate;

import java.util.List;
import undercroft.cellar.Place;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/**
 * A place at an instant.
 *
 * @param trendKelvin change of its day's mean over three days
 * @param air what was logged, °C, without what no room ever had
 * @param bottles what bottles there felt and will feel, °C
 * @param gaps stretches without a log
 */
public record PlaceOutlook(
        Place place,
        double nowCelsius,
        double trendKelvin,
        boolean measured,
        TimeSeries air,
        Track bottles,
        List<Span> gaps) {
    public PlaceOutlook {
        gaps = List.copyOf(gaps);
    }
}
