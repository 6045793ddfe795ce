package undercroft.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/** A workspace in memory that does everything at once. */
public final class SampleWorkspace {
    private SampleWorkspace() {}

    public static Workspace of(Cellar cellar) {
        return of(cellar, Map.of());
    }

    public static Workspace of(Cellar cellar, Map<String, TimeSeries> temperatures) {
        return new Workspace(new Memory(cellar, temperatures), new BackgroundTasks(Runnable::run, Runnable::run));
    }

    private record Memory(Cellar cellar, Map<String, TimeSeries> temperatures) implements CellarRepository {
        @Override
        public void save(Cellar changed) {}

        @Override
        public List<InvalidInput> faults() {
            return List.of();
        }

        @Override
        public TimeSeries saveTemperatures(String placeId, TimeSeries celsius) {
            return TimeSeries.empty();
        }

        @Override
        public void saveElsewhere(Path folder, Cellar changed, Map<String, TimeSeries> temperatures) {}

        @Override
        public void close() {}
    }
}
