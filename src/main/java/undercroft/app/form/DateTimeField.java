package undercroft.app.form;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** A date and a time of day on the cellar's wall clock. */
public final class DateTimeField extends Field<Instant> {
    private static final LocalDate EARLIEST = LocalDate.of(1970, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2100, 1, 1);

    private final ZoneId zone;
    private final DateText dates;
    private final StringProperty date = new SimpleStringProperty(this, "date");
    private final StringProperty time = new SimpleStringProperty(this, "time");
    private final Instant initial;
    private LocalDate today;
    private boolean next;
    private Instant earliest = Instant.MIN;
    private Instant latest = Instant.MAX;
    private final String initialDate;
    private final String initialTime;

    public DateTimeField(Messages messages, String id, String label, ZoneId zone, Instant initial) {
        super(messages, id, label);
        dates = new DateText(messages);
        this.zone = zone;
        this.initial = initial;
        ZonedDateTime local = initial.atZone(zone);
        today = local.toLocalDate();
        initialDate = dates.of(local.toLocalDate());
        initialTime = dates.of(local.toLocalTime());
        date.set(initialDate);
        time.set(initialTime);
        date.addListener((property, before, after) -> changed());
        time.addListener((property, before, after) -> changed());
    }

    /** Of something that happened to bottles: not before they were capped, not after now. */
    public DateTimeField happened(Instant capped, Instant now) {
        earliest = capped;
        latest = now;
        today = now.atZone(zone).toLocalDate();
        return this;
    }

    public StringProperty dateProperty() {
        return date;
    }

    public StringProperty timeProperty() {
        return time;
    }

    /** Of something that is to come: a day of the week is the next one. */
    public DateTimeField toCome(Instant now) {
        next = true;
        today = now.atZone(zone).toLocalDate();
        return this;
    }

    /** Days later, or earlier; nothing when the date cannot be read. */
    public void stepDays(int days) {
        try {
            date.set(dates.of(typed().day().plusDays(days)));
        } catch (InvalidInput unreadable) {
            leave();
        }
    }

    /** The date as it stands, or the one it began with while it cannot be read. */
    public LocalDate dateOrInitial() {
        try {
            return typed().day();
        } catch (InvalidInput unreadable) {
            return initial.atZone(zone).toLocalDate();
        }
    }

    public void setDate(LocalDate chosen) {
        date.set(dates.of(chosen));
    }

    /** A day of the week, or a time typed behind the date, becomes the date and the time it means. */
    @Override
    protected void tidy() {
        try {
            DayText typed = typed();
            if (typed.isSpoken()) {
                date.set(dates.of(typed.day()));
                typed.time().map(dates::of).ifPresent(time::set);
            }
        } catch (InvalidInput unreadable) {
            // It stays as it was typed, with what is wrong about it beside it.
        }
    }

    private DayText typed() {
        return DayText.parse(date.get(), today, next, dates.messages().locale(), dates);
    }

    /** A moment left as it was keeps its seconds; in an hour that comes twice the first is meant. */
    @Override
    public Instant value() {
        Instant read = read();
        if (read.isBefore(earliest)) {
            throw new InvalidInput("", "form.fault.before-capped");
        }
        if (read.isAfter(latest)) {
            throw new InvalidInput("", "form.fault.to-come");
        }
        return read;
    }

    private Instant read() {
        if (initialDate.equals(date.get()) && initialTime.equals(time.get())) {
            return initial;
        }
        DayText typed = typed();
        LocalDate day = typed.day();
        LocalTime clock = typed.time().orElseGet(() -> dates.time(time.get()));
        if (day.isBefore(EARLIEST) || day.isAfter(LATEST)) {
            throw new InvalidInput("", "form.fault.year", day.getYear());
        }
        LocalDateTime local = day.atTime(clock);
        if (zone.getRules().getValidOffsets(local).isEmpty()) {
            throw new InvalidInput("", "form.fault.skipped-hour", dates.of(clock), dates.of(day));
        }
        return local.atZone(zone).toInstant().truncatedTo(ChronoUnit.MINUTES);
    }
}
