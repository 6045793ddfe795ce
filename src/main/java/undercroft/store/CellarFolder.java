package undercroft.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.store.json.CellarJson;

/**
 * Where things lie in a cellar folder, and how they are read. The folder itself may be reached through links, since the
 * user named it; what lies in it may not be one.
 */
record CellarFolder(Path path, Disk disk) {
    static final String FILE = "cellar.json";

    /** What systems leave in folders unasked. */
    private static final Set<String> LITTER = Set.of(CellarLock.FILE, "desktop.ini", "Thumbs.db");

    static CellarFolder of(Path path) {
        return of(path, Disk.REAL);
    }

    static CellarFolder of(Path path, Disk disk) {
        if (!Files.isDirectory(path)) {

            throw new InvalidInput(
                    path.toString(), Files.exists(path) ? "store.fault.no-folder" : "store.fault.not-there", FILE);
        }
        try {
            return new CellarFolder(path.toRealPath(), disk);
        } catch (IOException failure) {
            throw new InvalidInput(path.toString(), "store.fault.unread", AtomicFile.reason(failure));
        }
    }

    /** A new or empty folder for a new cellar. */
    static CellarFolder prepare(Path path, AtomicFile files) {
        if (!Files.exists(path)) {
            files.makeFolders(path, path.toString());
            return of(path, files.disk());
        }
        CellarFolder folder = of(path, files.disk());
        folder.requireNone();
        folder.requireEmpty();
        return folder;
    }

    void requireNone() {
        if (kindOf(file()) != Disk.Kind.NOTHING) {
            throw new InvalidInput(path.toString(), "store.fault.cellar-there");
        }
    }

    private void requireEmpty() {
        for (Path entry : list(path, path.toString())) {
            String name = entry.getFileName().toString();
            if (!name.startsWith(".") && !LITTER.contains(name) && !AtomicFile.isLeftover(entry)) {
                throw new InvalidInput(path.toString(), "store.fault.other-files", name);
            }
        }
    }

    Disk.Kind kindOf(Path entry) {
        try {
            return disk.entry(entry).kind();
        } catch (IOException failure) {
            throw new InvalidInput(
                    String.valueOf(entry.getFileName()), "store.fault.unread", AtomicFile.reason(failure));
        }
    }

    /** The entries of a folder inside, none when it is not there; {@code name} is what the user calls it. */
    List<Path> list(Path inside, String name) {
        try {
            return switch (disk.entry(inside).kind()) {
                case FOLDER -> disk.list(inside);
                case NOTHING -> List.of();
                case LINK -> throw new InvalidInput(name, "store.fault.folder-link");
                default -> throw new InvalidInput(name, "store.fault.folder-file");
            };
        } catch (IOException failure) {
            throw new InvalidInput(name, "store.fault.unlisted", AtomicFile.reason(failure));
        }
    }

    Path file() {
        return path.resolve(FILE);
    }

    byte[] bytes() {
        if (kindOf(file()) == Disk.Kind.NOTHING) {
            boolean earlier = kindOf(historyFolder()) == Disk.Kind.FOLDER
                    && list(historyFolder(), "history").stream()
                            .anyMatch(entry -> entry.getFileName().toString().startsWith("cellar-"));
            throw new InvalidInput(FILE, earlier ? "store.fault.missing-with-history" : "store.fault.missing");
        }
        return bytes(file());
    }

    byte[] bytes(Path file) {
        return new WholeFile(disk).bytes(file, file.getFileName().toString(), WholeFile.MOST_CELLAR_BYTES);
    }

    CellarJson json() {
        return CellarJson.read(bytes(), FILE);
    }

    CellarJson json(Path file) {
        return CellarJson.read(bytes(file), file.getFileName().toString());
    }

    Path temperatureFolder() {
        return path.resolve("temperatures");
    }

    Path temperatureFile(String placeId) {
        return temperatureFolder().resolve(placeId + ".csv");
    }

    Path historyFolder() {
        return path.resolve("history");
    }

    /** Is told what was read of a place's file; no bytes where there is none. */
    interface Reading {
        void read(String placeId, byte[] bytes, TimeSeries celsius);
    }

    /** What is logged, as far as it can be read; what cannot is told, and the rest is used. */
    LoggedTemperatures temperatures(Cellar cellar, Reading reading) {
        Map<String, TimeSeries> all = new LinkedHashMap<>();
        List<InvalidInput> faults = new ArrayList<>();
        try {
            list(temperatureFolder(), "temperatures");
        } catch (InvalidInput unreadable) {
            return new LoggedTemperatures(Map.of(), List.of(unreadable));
        }
        for (Place place : cellar.places()) {
            try {
                Path file = temperatureFile(place.id());
                if (kindOf(file) == Disk.Kind.NOTHING) {
                    reading.read(place.id(), new byte[0], TimeSeries.empty());
                } else {
                    byte[] bytes = TemperatureFile.bytes(disk, file);
                    TimeSeries celsius = TemperatureFile.readWhatIsSound(bytes, TemperatureFile.nameOf(file), faults);
                    reading.read(place.id(), bytes, celsius);
                    all.put(place.id(), celsius);
                }
            } catch (InvalidInput unreadable) {
                faults.add(unreadable);
            }
        }
        return new LoggedTemperatures(all, faults);
    }
}
