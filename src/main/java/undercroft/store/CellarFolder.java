package undercroft.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.json.CellarJson;

/** Where things lie in a cellar folder, and how they are read. Writes nothing but the folder itself. */
record CellarFolder(Path path) {
    static final String FILE = "cellar.json";

    /** What systems leave in folders unasked. */
    private static final Set<String> LITTER = Set.of(CellarLock.FILE, "desktop.ini", "Thumbs.db");

    static CellarFolder of(Path path) {
        if (!Files.isDirectory(path)) {
            String what = Files.exists(path) ? "is not a folder" : "does not exist";
            throw new InvalidInput(path.toString(), what + "; give the folder that holds " + FILE);
        }
        return new CellarFolder(path);
    }

    /** A new or empty folder for a new cellar. */
    static CellarFolder prepare(Path path) {
        try {
            if (Files.exists(path)) {
                CellarFolder folder = of(path);
                folder.requireNone();
                folder.requireEmpty();
                return folder;
            }
            Files.createDirectories(path);
            return new CellarFolder(path);
        } catch (IOException failure) {
            throw new InvalidInput(path.toString(), "could not be made (" + AtomicFile.reason(failure) + ")");
        }
    }

    void requireNone() {
        if (Files.exists(file())) {
            throw new InvalidInput(path.toString(), "holds a cellar already; open it, or choose another folder");
        }
    }

    private void requireEmpty() throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(path)) {
            for (Path entry : entries) {
                String name = entry.getFileName().toString();
                if (!name.startsWith(".") && !LITTER.contains(name)) {
                    throw new InvalidInput(
                            path.toString(), "holds other files (" + name + "); choose a new or an empty folder");
                }
            }
        }
    }

    Path file() {
        return path.resolve(FILE);
    }

    byte[] bytes() {
        return bytes(file());
    }

    CellarJson json() {
        return CellarJson.read(bytes(), FILE);
    }

    static CellarJson json(Path file) {
        return CellarJson.read(bytes(file), file.getFileName().toString());
    }

    private static byte[] bytes(Path file) {
        String name = file.getFileName().toString();
        if (!Files.exists(file)) {
            throw new InvalidInput(name, "is missing; this folder holds no cellar");
        }
        try {
            return Files.readAllBytes(file);
        } catch (IOException failure) {
            throw new InvalidInput(name, "could not be read (" + AtomicFile.reason(failure) + ")");
        }
    }

    Path temperatureFolder() {
        return path.resolve("temperatures");
    }

    Path temperatureFile(String placeId) {
        return temperatureFolder().resolve(placeId + ".csv");
    }

    TimeSeries temperatures(String placeId) {
        Path file = temperatureFile(placeId);
        return Files.exists(file) ? TemperatureFile.read(file) : TimeSeries.empty();
    }

    Map<String, TimeSeries> temperatures(Cellar cellar) {
        Map<String, TimeSeries> all = new LinkedHashMap<>();
        for (Place place : cellar.places()) {
            if (Files.exists(temperatureFile(place.id()))) {
                all.put(place.id(), temperatures(place.id()));
            }
        }
        return all;
    }
}
