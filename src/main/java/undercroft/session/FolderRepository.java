package undercroft.session;

import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;

/** Keeps a workspace's cellar in a folder. */
public final class FolderRepository implements CellarRepository {
    private final CellarStore store;

    public FolderRepository(CellarStore store) {
        this.store = store;
    }

    @Override
    public Cellar cellar() {
        return store.cellar();
    }

    @Override
    public Map<String, TimeSeries> temperatures() {
        return store.temperatures().celsius();
    }

    @Override
    public void save(Cellar cellar) {
        store.save(cellar);
    }

    @Override
    public void saveTemperatures(String placeId, TimeSeries celsius) {
        store.replaceTemperatures(placeId, celsius);
    }

    @Override
    public void close() {
        store.close();
    }
}
