package undercroft.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.Disk;
import undercroft.store.json.CellarJson;

/** Looks a cellar folder over and changes nothing. */
final class FolderCheck {
    private FolderCheck() {}

    static List<InvalidInput> faults(Path path) {
        List<InvalidInput> faults = new ArrayList<>();
        try {
            CellarFolder folder = CellarFolder.of(path);
            Cellar cellar = cellar(folder, faults);
            List<Path> logs = temperatureFiles(folder);
            if (cellar != null) {
                checkMissing(folder, cellar, faults);
            }
            for (Path file : folder.list(folder.path(), path.toString())) {
                if (OtherVersions.isNamedLikeACopy(file)) {
                    faults.add(new InvalidInput(file.getFileName().toString(), "store.fault.copy"));
                }
            }
            for (Path file : logs) {
                if (cellar != null) {
                    checkKnown(file, cellar, faults);
                }
                checkLines(folder, file, faults);
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
                faults.add(CellarJson.newer(json.schema(), "store.newer.look").within(CellarFolder.FILE));
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
            if (place.temperature() instanceof TemperatureSource.Logged && folder.kindOf(file) == Disk.Kind.NOTHING) {
                faults.add(new InvalidInput(TemperatureFile.nameOf(file), "store.fault.log-missing", place.id()));
            }
        }
    }

    private static List<Path> temperatureFiles(CellarFolder folder) {
        return folder.list(folder.temperatureFolder(), "temperatures").stream()
                .filter(file -> file.getFileName().toString().endsWith(".csv"))
                .toList();
    }

    private static void checkKnown(Path file, Cellar cellar, List<InvalidInput> faults) {
        String fileName = file.getFileName().toString();
        String id = fileName.substring(0, fileName.length() - ".csv".length());
        if (cellar.places().stream().noneMatch(place -> place.id().equals(id))) {
            faults.add(new InvalidInput(TemperatureFile.nameOf(file), "store.fault.no-place"));
        }
    }

    private static void checkLines(CellarFolder folder, Path file, List<InvalidInput> faults) {
        try {
            TemperatureFile.readWhatIsSound(folder.disk(), file, faults);
        } catch (InvalidInput fault) {
            faults.add(fault);
        }
    }
}
