package undercroft.session;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.Supposition;
import undercroft.outlook.climate.AirLogs;
import undercroft.series.TimeSeries;

/** Outlooks over logs that are cleaned once each, not at every move of the slider. */
record RememberedAir(AirLogs logs) implements Forecasts.Calculator {
    RememberedAir() {
        this(new AirLogs());
    }

    @Override
    public CellarOutlook outlook(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
        return supposed(cellar, temperatures, at, List.of());
    }

    @Override
    public CellarOutlook supposed(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, List<Supposition> suppositions) {
        return Outlooks.of(cellar, temperatures, at, suppositions, logs);
    }
}
