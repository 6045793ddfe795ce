package undercroft.session;

import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.series.TimeSeries;

/** Where a workspace keeps its cellar. Methods may block on a disk and are called in the background. */
public interface CellarRepository extends AutoCloseable {
    Cellar cellar();

    /** Logged air temperatures by place id, °C. */
    Map<String, TimeSeries> temperatures();

    /** Keeps the cellar, all or nothing. */
    void save(Cellar cellar);

    /** Replaces what is logged for a place, all or nothing. */
    void saveTemperatures(String placeId, TimeSeries celsius);

    @Override
    void close();
}
