package undercroft.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.json.CellarJson;

/** A cellar shipped inside the program, under {@code undercroft/demo-data/<name>} on the class path. */
public final class DemoCellar {
    private final String name;
    private final byte[] file;
    private final Cellar cellar;

    private DemoCellar(String name, byte[] file, Cellar cellar) {
        this.name = name;
        this.file = file;
        this.cellar = cellar;
    }

    /** The demo cellar of a name, or a sentence that there is none. */
    public static DemoCellar of(String name) {
        byte[] file = resource(name, CellarFolder.FILE);
        if (file == null) {
            throw new InvalidInput(name, "store.fault.no-demo");
        }
        return new DemoCellar(
                name, file, CellarJson.read(file, CellarFolder.FILE).cellar());
    }

    public Cellar cellar() {
        return cellar;
    }

    /** The temperatures of the places that have a file, by the id of the place. */
    public Map<String, TimeSeries> temperatures() {
        Map<String, TimeSeries> all = new LinkedHashMap<>();
        for (Place place : cellar.places()) {
            String path = TemperatureFile.nameOf(Path.of(place.id() + ".csv"));
            byte[] temperatures = resource(name, path);
            if (temperatures != null) {
                all.put(place.id(), TemperatureFile.read(temperatures, path));
            }
        }
        return all;
    }

    /** Copies the demo into a new or empty folder, as it was shipped. {@code cellar.json} comes last. */
    public void copyTo(Path target) {
        AtomicFile files = new AtomicFile(Disk.REAL);
        CellarFolder folder = CellarFolder.prepare(target, files);
        files.makeFolder(folder.temperatureFolder(), "temperatures");
        for (Place place : cellar.places()) {
            Path copy = folder.temperatureFile(place.id());
            byte[] temperatures = resource(name, TemperatureFile.nameOf(copy));
            if (temperatures != null) {
                files.replace(copy, temperatures, TemperatureFile.nameOf(copy));
            }
        }
        files.replace(folder.file(), file, CellarFolder.FILE);
    }

    private static byte[] resource(String name, String path) {
        try (InputStream in = DemoCellar.class.getResourceAsStream("/undercroft/demo-data/" + name + "/" + path)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException failure) {
            throw new InvalidInput(name, "store.fault.unread-demo", AtomicFile.reason(failure));
        }
    }
}
