package undercroft.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/** Where a workspace keeps its cellar. Methods may block on a disk and are called in the background. */
public interface CellarRepository extends AutoCloseable {
    Cellar cellar();

    /** Logged air temperatures by place id, °C. */
    Map<String, TimeSeries> temperatures();

    /** Keeps the cellar, all or nothing. */
    void save(Cellar cellar);

    /** What could not be read of the temperatures: lines and files that are left out. */
    List<InvalidInput> faults();

    /**
     * Replaces what is logged for a place, all or nothing.
     *
     * @return what another program wrote into the log since, which is kept in it; empty nearly always
     */
    TimeSeries saveTemperatures(String placeId, TimeSeries celsius);

    /** Keeps all of it, as a cellar of its own, in a folder that is new or empty. */
    void saveElsewhere(Path folder, Cellar cellar, Map<String, TimeSeries> temperatures);

    @Override
    void close();
}
