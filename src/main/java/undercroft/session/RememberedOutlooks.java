package undercroft.session;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookMemory;
import undercroft.outlook.Outlooks;
import undercroft.outlook.Supposition;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.series.TimeSeries;

/** Works out only what changed since the last time. */
record RememberedOutlooks(OutlookMemory memory) implements Forecasts.Calculator {
    RememberedOutlooks() {
        this(new OutlookMemory());
    }

    @Override
    public CellarOutlook outlook(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
        return supposed(cellar, temperatures, at, List.of());
    }

    @Override
    public CellarOutlook outlook(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, Consumer<BatchOutlook> whenKnown) {
        return Outlooks.of(cellar, temperatures, at, List.of(), memory, whenKnown);
    }

    @Override
    public CellarOutlook supposed(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, List<Supposition> suppositions) {
        return Outlooks.of(cellar, temperatures, at, suppositions, memory, batch -> {});
    }
}
