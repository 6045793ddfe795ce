package undercroft.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.wording.ShelfWords;

/**
 * Servings, first tastes and best-before dates as iCalendar (RFC 5545). Moments stand in UTC, so that every calendar shows
 * the wall clock of the place its reader is in, on both sides of a change of summer time; dates stand as dates. Each entry
 * keeps its UID from export to export, so that importing again updates it.
 */
public final class ShelfCalendar {
    private static final String PROGRAM = "-//Undercroft//Shelf//EN";

    private final ShelfWords words;
    private final CellarOutlook outlook;
    private final Instant stamp;

    private ShelfCalendar(ShelfWords words, Instant stamp) {
        this.words = words;
        this.outlook = words.outlook();
        this.stamp = stamp;
    }

    /** The calendar of a shelf, written at an instant. */
    public static ShelfCalendar of(ShelfWords words, Instant stamp) {
        return new ShelfCalendar(words, stamp);
    }

    /** Everything of all batches. */
    public String text() {
        List<VEvent> events = new ArrayList<>();
        outlook.batches().forEach(batch -> events.addAll(events(batch)));
        return text(events);
    }

    /** Everything of one batch. */
    public String text(String batchId) {
        return text(events(outlook.batch(batchId)));
    }

    private List<VEvent> events(BatchOutlook batch) {
        return new CalendarEntries(words, batch, stamp).all();
    }

    private static String text(List<VEvent> events) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId(PROGRAM));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        events.forEach(calendar::add);
        StringWriter text = new StringWriter();
        try {
            new CalendarOutputter(false).output(calendar, text);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return text.toString();
    }

    /**
     * Writes one file, or one a batch into a folder; batches with nothing to come are left out there.
     *
     * @param out the file, or the folder when {@code perBatch}
     * @return the files written, in order
     * @throws InvalidInput when it may not be written there
     */
    public List<Path> write(Path out, boolean perBatch) {
        List<Path> written = new ArrayList<>();
        try {
            if (!perBatch) {
                Path parent = out.toAbsolutePath().getParent();
                Files.createDirectories(parent);
                written.add(write(out, text()));
                return written;
            }
            Files.createDirectories(out);
            for (BatchOutlook batch : outlook.batches()) {
                List<VEvent> events = events(batch);
                if (!events.isEmpty()) {
                    written.add(write(out.resolve(batch.id() + ".ics"), text(events)));
                }
            }
        } catch (IOException fault) {
            InvalidInput told = new InvalidInput(out.toString(), "report.fault.calendar");
            told.initCause(fault);
            throw told;
        }
        return written;
    }

    private static Path write(Path file, String text) throws IOException {
        Path beside = file.resolveSibling(file.getFileName() + ".tmp");
        Files.write(beside, text.getBytes(StandardCharsets.UTF_8));
        return Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
