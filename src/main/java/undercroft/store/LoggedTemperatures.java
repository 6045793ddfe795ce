package undercroft.store;

import java.util.List;
import java.util.Map;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/**
 * What is logged in the places of a cellar.
 *
 * @param celsius by the id of the place, for every place whose file could be read
 * @param faults lines that are left out and files that could not be read, each by file and line
 */
public record LoggedTemperatures(Map<String, TimeSeries> celsius, List<InvalidInput> faults) {
    public LoggedTemperatures {
        celsius = Map.copyOf(celsius);
        faults = List.copyOf(faults);
    }
}
