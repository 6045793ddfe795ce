package undercroft.session;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.outlook.Supposition;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.series.TimeSeries;

/** Outlooks in which only what changed since the one before is worked out. */
record OnlyWhatChanged(ShelfMemory memory) implements Forecasts.Calculator {
    OnlyWhatChanged() {
        this(new ShelfMemory());
    }

    @Override
    public CellarOutlook outlook(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
        return supposed(cellar, temperatures, at, List.of());
    }

    @Override
    public CellarOutlook outlook(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, Consumer<CellarOutlook> soFar) {
        return Outlooks.of(cellar, temperatures, at, List.of(), memory, soFar);
    }

    @Override
    public CellarOutlook supposed(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, List<Supposition> suppositions) {
        return Outlooks.of(cellar, temperatures, at, suppositions, memory);
    }

    @Override
    public EvidenceCourse evidence(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, String batchId) {
        return Outlooks.evidence(cellar, temperatures, at, batchId, memory);
    }
}
