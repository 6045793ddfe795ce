package undercroft.store;

import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.store.json.ReadingsFile;
import undercroft.store.logger.Choices;
import undercroft.store.logger.Inspection;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.Progress;

/**
 * The folder {@code incoming} of a cellar: {@code incoming/<place-id>/*.csv} is put there by any other program or
 * machine, written elsewhere and renamed, {@code incoming/readings/*.json} likewise. Whoever holds the cellar's lock takes
 * it in and moves it to {@code incoming/done}, of which the newest {@value #MOST_DONE} of each folder stay, or to
 * {@code incoming/refused} when it cannot be read, from where nothing is deleted.
 */
public final class Incoming {
    private static final String FOLDER = "incoming";
    private static final String DONE = "done";
    private static final String REFUSED = "refused";
    private static final String READINGS = "readings";
    private static final SecureRandom RANDOM = new SecureRandom();

    /** So many files of a folder are looked at in one go; the rest waits for the next. */
    private static final int MOST_AT_ONCE = 1_000;

    /** A sensor that is taken in once a minute leaves so many in a day and a half. */
    private static final int MOST_DONE = 2_000;

    private final CellarFolder folder;
    private final AtomicFile files;

    Incoming(CellarFolder folder) {
        this.folder = folder;
        this.files = new AtomicFile(folder.disk());
    }

    public static Incoming of(Path cellarFolder) {
        return new Incoming(CellarFolder.of(cellarFolder));
    }

    /** A file that waits in a folder of its own kind: a place's id, or {@code readings}. */
    public record Waiting(String kind, Path file) {
        /** What it is called in the cellar folder. */
        public String name() {
            return FOLDER + "/" + kind + "/" + file.getFileName();
        }
    }

    /** Puts samples there for whoever has the cellar open. Returns the file. */
    public Path drop(String placeId, TimeSeries celsius, Instant now) {
        String name = freshName(now) + ".csv";
        return drop(placeId, name, TemperatureFile.print(TemperatureFile.asWritten(celsius, name)));
    }

    /** Puts readings there for whoever has the cellar open. Returns the file. */
    public Path drop(ReadingsFile readings, Instant now) {
        return drop(READINGS, freshName(now) + ".json", ByteBuffer.wrap(readings.bytes()));
    }

    private static String freshName(Instant now) {
        byte[] random = new byte[4];
        RANDOM.nextBytes(random);
        return History.FILE_TIME.format(now) + "-" + HexFormat.of().formatHex(random);
    }

    private Path drop(String kind, String name, ByteBuffer content) {
        Path into = folder.path().resolve(FOLDER).resolve(kind);
        makeFolders(into);
        Path file = into.resolve(name);
        files.replace(file, content, FOLDER + "/" + kind);
        files.confirm();
        return file;
    }

    /** Deletes what programs that died while they put something there left behind, and the oldest of what was taken in. */
    void removeSurplus(Cellar cellar, Instant now) {
        Path incoming = folder.path().resolve(FOLDER);
        if (folder.kindOf(incoming) == Disk.Kind.FOLDER) {
            Path done = incoming.resolve(DONE);
            boolean hasDone = folder.kindOf(done) == Disk.Kind.FOLDER;
            Stream.concat(cellar.places().stream().map(Place::id), Stream.of(READINGS))
                    .forEach(kind -> {
                        files.removeAbandoned(incoming.resolve(kind), now, file -> true);
                        if (hasDone) {
                            files.keepNewest(done.resolve(kind), MOST_DONE);
                        }
                    });
        }
    }

    /** The temperatures that wait for the places of a cellar, in the order of the names. */
    public List<Waiting> waiting(Cellar cellar) {
        List<Waiting> all = new ArrayList<>();
        for (Place place : cellar.places()) {
            all.addAll(waiting(place.id(), ".csv"));
        }
        return all;
    }

    public boolean isAnythingWaiting(Cellar cellar) {
        return !waitingReadings().isEmpty() || !waiting(cellar).isEmpty();
    }

    /** The readings that wait, in the order of the names. */
    public List<Waiting> waitingReadings() {
        return waiting(READINGS, ".json");
    }

    private List<Waiting> waiting(String kind, String ending) {
        Path incoming = folder.path().resolve(FOLDER);
        Path of = incoming.resolve(kind);
        boolean isThere = folder.kindOf(incoming) == Disk.Kind.FOLDER && folder.kindOf(of) == Disk.Kind.FOLDER;
        return !isThere
                ? List.of()
                : folder.list(of, FOLDER + "/" + kind).stream()
                        .filter(file -> file.getFileName().toString().endsWith(ending))
                        .limit(MOST_AT_ONCE)
                        .map(file -> new Waiting(kind, file))
                        .toList();
    }

    /** The readings in a file. */
    public ReadingsFile readings(Waiting waiting) {
        return ReadingsFile.read(
                new WholeFile(folder.disk()).bytes(waiting.file(), waiting.name(), WholeFile.MOST_SMALL_BYTES));
    }

    /** The samples in a file: as the cellar's own files have them, or as any logger's file that leaves nothing open. */
    public TimeSeries celsius(Waiting waiting, ZoneId zone) {
        byte[] bytes =
                new WholeFile(folder.disk()).bytes(waiting.file(), waiting.name(), WholeFile.MOST_TEMPERATURE_BYTES);
        if (!TemperatureLines.isForeign(bytes)) {
            return TemperatureFile.read(bytes, waiting.name());
        }
        Inspection found = LoggerFile.inspect(waiting.name(), bytes, zone);
        if (!found.questions().isEmpty()) {
            throw new InvalidInput(
                    waiting.name(),
                    "incoming.fault.question",
                    found.questions().get(0).asked());
        }
        return LoggerFile.read(waiting.name(), bytes, Choices.from(found), Progress.NONE)
                .celsius();
    }

    /** Moves a file away that was taken in. */
    public void done(Waiting waiting) {
        moveTo(DONE, waiting);
    }

    /** Moves a file away that cannot be taken in. */
    public void refused(Waiting waiting) {
        moveTo(REFUSED, waiting);
    }

    private void moveTo(String where, Waiting waiting) {
        Path to = folder.path().resolve(FOLDER).resolve(where).resolve(waiting.kind());
        makeFolders(to);
        String name = waiting.file().getFileName().toString();
        Path target = to.resolve(name);
        for (int n = 2; folder.kindOf(target) != Disk.Kind.NOTHING; n++) {
            target = to.resolve(n + "-" + name);
        }
        files.rename(waiting.file(), target, waiting.name());
    }

    /** Folder by folder, so that no link in between is followed. */
    private void makeFolders(Path inside) {
        Path made = folder.path();
        for (Path part : folder.path().relativize(inside)) {
            made = made.resolve(part);
            files.makeFolder(made, FOLDER);
        }
    }
}
