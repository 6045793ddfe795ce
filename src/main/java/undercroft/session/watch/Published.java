package undercroft.session.watch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.quantity.InvalidInput;
import undercroft.report.Acts;
import undercroft.report.ShelfCalendar;
import undercroft.report.ShelfFeed;
import undercroft.report.ShelfReport;
import undercroft.store.Export;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.wording.ShelfWords;

/**
 * A folder that the user's own sync or web server hands on: the report, a calendar and a feed, all or none, and nothing of
 * anybody else's replaced. The folder is not made: a drive that is not there must not be written beside.
 */
record Published(Path folder, Export export) {
    private static final String CALENDAR = "dates.ics";

    void write(ShelfWords words, Map<String, EvidenceCourse> courses, Acts acts) {
        if (!Files.isDirectory(folder)) {
            throw new InvalidInput(folder.toString(), "watch.fault.no-folder");
        }
        Map<String, Consumer<Writer>> files = new LinkedHashMap<>(ShelfReport.of(words, courses));
        files.put(CALENDAR, text(() -> ShelfCalendar.of(words, words.at()).text()));
        files.put(ShelfFeed.FILE, text(() -> ShelfFeed.of(words, acts, ShelfReport.PAGE)));
        try {
            export.folder(folder, files, Export.Replacing.OURS);
        } catch (InvalidInput fault) {
            throw Export.isForeign(fault) ? new InvalidInput(fault.where(), "watch.fault.foreign") : fault;
        }
    }

    /** What the feed there has told before. */
    Optional<Acts> told(Instant now) {
        try {
            byte[] bytes = new WholeFile(Disk.REAL)
                    .bytes(folder.resolve(ShelfFeed.FILE), ShelfFeed.FILE, WholeFile.MOST_SMALL_BYTES);
            return ShelfFeed.read(new String(bytes, StandardCharsets.UTF_8), now);
        } catch (InvalidInput none) {
            return Optional.empty();
        }
    }

    private static Consumer<Writer> text(Supplier<String> text) {
        return out -> {
            try {
                out.write(text.get());
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        };
    }
}
