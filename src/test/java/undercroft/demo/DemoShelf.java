package undercroft.demo;

import java.time.Instant;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.series.TimeSeries;

/** The demo cellar for tests of other packages, as it stands when its log ends. */
public final class DemoShelf {
    public static final Instant NOW = Instant.ofEpochSecond(DemoWeather.UNTIL);

    private DemoShelf() {}

    public static Cellar cellar() {
        return DemoCellar.cellar();
    }

    public static Map<String, TimeSeries> temperatures() {
        return DemoWeather.temperatures();
    }

    public static CellarOutlook outlook() {
        return Outlooks.of(cellar(), temperatures(), NOW);
    }
}
