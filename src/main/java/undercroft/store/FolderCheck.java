package undercroft.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;

/** Looks a cellar folder over and changes nothing. */
final class FolderCheck {
    /** Faults told of one temperature file; a file of another kind has one in every line. */
    static final int TOLD_PER_FILE = 20;

    private FolderCheck() {}

    static List<InvalidInput> faults(Path path) {
        List<InvalidInput> faults = new ArrayList<>();
        try {
            CellarFolder folder = CellarFolder.of(path);
            Cellar cellar = cellar(folder, faults);
            if (cellar != null) {
                checkMissing(folder, cellar, faults);
            }
            for (Path file : temperatureFiles(folder)) {
                if (cellar != null) {
                    checkKnown(file, cellar, faults);
                }
                checkLines(file, faults);
            }
        } catch (InvalidInput fault) {
            faults.add(fault);
        }
        return List.copyOf(faults);
    }

    private static Cellar cellar(CellarFolder folder, List<InvalidInput> faults) {
        try {
            CellarJson json = CellarJson.read(folder.bytes(), CellarFolder.FILE, faults);
            if (json != null && json.isNewer()) {
                faults.add(CellarJson.newer(json.schema(), "so it opens to be looked at only")
                        .within(CellarFolder.FILE));
            }
            return json == null ? null : json.cellar();
        } catch (InvalidInput fault) {
            faults.add(fault);
            return null;
        }
    }

    private static void checkMissing(CellarFolder folder, Cellar cellar, List<InvalidInput> faults) {
        for (Place place : cellar.places()) {
            Path file = folder.temperatureFile(place.id());
            if (place.temperature() instanceof TemperatureSource.Logged && !Files.exists(file)) {
                faults.add(new InvalidInput(
                        TemperatureFile.nameOf(file),
                        "is missing, though the place \"" + place.id()
                                + "\" is said to be logged; import its temperatures or give it a guess"));
            }
        }
    }

    private static List<Path> temperatureFiles(CellarFolder folder) {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(folder.temperatureFolder())) {
            return files;
        }
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder.temperatureFolder(), "*.csv")) {
            entries.forEach(files::add);
        } catch (IOException | DirectoryIteratorException failure) {
            throw new InvalidInput("temperatures", "could not be listed; allow this program to read the folder");
        }
        files.sort(null);
        return files;
    }

    private static void checkKnown(Path file, Cellar cellar, List<InvalidInput> faults) {
        String fileName = file.getFileName().toString();
        String id = fileName.substring(0, fileName.length() - ".csv".length());
        if (cellar.places().stream().noneMatch(place -> place.id().equals(id))) {
            faults.add(new InvalidInput(
                    TemperatureFile.nameOf(file),
                    "belongs to no place; rename it to the id of a place or take it away"));
        }
    }

    private static void checkLines(Path file, List<InvalidInput> faults) {
        List<InvalidInput> found = new ArrayList<>();
        int[] more = {0};
        try {
            new TemperatureLines(TemperatureFile.bytes(file), TemperatureFile.nameOf(file), fault -> {
                        if (found.size() < TOLD_PER_FILE) {
                            found.add(fault);
                        } else {
                            more[0]++;
                        }
                    })
                    .read();
        } catch (InvalidInput fault) {
            found.add(fault);
        }
        faults.addAll(found);
        if (more[0] > 0) {
            faults.add(new InvalidInput(
                    TemperatureFile.nameOf(file),
                    "has " + more[0] + " more lines at fault; correct the first ones first"));
        }
    }
}
