package undercroft.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
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

    /** A calendar for each batch that has something to come, by the name of its file. */
    public Map<String, String> perBatch() {
        Map<String, String> files = new LinkedHashMap<>();
        for (BatchOutlook batch : outlook.batches()) {
            List<VEvent> events = events(batch);
            if (!events.isEmpty()) {
                files.put(batch.id() + ".ics", text(events));
            }
        }
        return files;
    }
}
