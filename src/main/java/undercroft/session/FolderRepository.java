package undercroft.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.LoggedTemperatures;

/** Keeps a workspace's cellar in a folder. */
public final class FolderRepository implements CellarRepository {
    /** Files keep thousandths. */
    private static final double ROUNDING = 0.000_6;

    private final CellarStore store;
    private List<InvalidInput> faults = List.of();

    public FolderRepository(CellarStore store) {
        this.store = store;
    }

    @Override
    public Cellar cellar() {
        return store.cellar();
    }

    @Override
    public Map<String, TimeSeries> temperatures() {
        LoggedTemperatures logged = store.temperatures();
        faults = logged.faults();
        return logged.celsius();
    }

    @Override
    public void save(Cellar cellar) {
        store.save(cellar);
    }

    @Override
    public TimeSeries saveTemperatures(String placeId, TimeSeries celsius) {
        return written(store.replaceTemperatures(placeId, celsius), celsius);
    }

    /** What the file holds beyond what was wanted; values differ by what rounding takes away, no more. */
    private static TimeSeries written(TimeSeries there, TimeSeries wanted) {
        TimeSeries.Builder others = new TimeSeries.Builder();
        int next = 0;
        for (int i = 0; i < there.size(); i++) {
            while (next < wanted.size() && wanted.timeAt(next) < there.timeAt(i)) {
                next++;
            }
            boolean ours = next < wanted.size()
                    && wanted.timeAt(next) == there.timeAt(i)
                    && Math.abs(wanted.valueAt(next) - there.valueAt(i)) <= ROUNDING;
            if (!ours) {
                others.add(there.timeAt(i), there.valueAt(i));
            }
        }
        return others.build();
    }

    @Override
    public void saveElsewhere(Path folder, Cellar cellar, Map<String, TimeSeries> temperatures) {
        store.saveElsewhere(folder, cellar, temperatures);
    }

    @Override
    public List<InvalidInput> faults() {
        return faults;
    }

    @Override
    public void close() {
        store.close();
    }
}
