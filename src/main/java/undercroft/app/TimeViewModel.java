package undercroft.app;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import undercroft.cellar.Batch;
import undercroft.quantity.UnitSystem;
import undercroft.session.Workspace;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** The day the shelf is seen as of: days from today, 0 following the clock, others at noon on the cellar's wall clock. */
public final class TimeViewModel {
    private final Messages messages;
    private static final int LEAST_DAYS_BACK = 30;
    private static final int DAYS_AHEAD = 90;

    private final Workspace workspace;
    private final ObjectProperty<Instant> asOf;
    private final Clock clock;
    private final IntegerProperty day = new SimpleIntegerProperty(this, "day");
    private final ReadOnlyIntegerWrapper firstDay = new ReadOnlyIntegerWrapper(this, "firstDay");
    private final ReadOnlyIntegerWrapper lastDay = new ReadOnlyIntegerWrapper(this, "lastDay", DAYS_AHEAD);
    private final ReadOnlyStringWrapper label = new ReadOnlyStringWrapper(this, "label", "");

    public TimeViewModel(Messages messages, Workspace workspace, ObjectProperty<Instant> asOf, Clock clock) {
        this.messages = messages;
        this.workspace = workspace;
        this.asOf = asOf;
        this.clock = clock;
        workspace.stateProperty().addListener((property, before, after) -> refresh());
        day.addListener((property, before, after) -> show());
        refresh();
    }

    public IntegerProperty dayProperty() {
        return day;
    }

    /** Days from today to the first capping; below zero. */
    public ReadOnlyIntegerProperty firstDayProperty() {
        return firstDay.getReadOnlyProperty();
    }

    public ReadOnlyIntegerProperty lastDayProperty() {
        return lastDay.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty labelProperty() {
        return label.getReadOnlyProperty();
    }

    /** Looks so many days later, or earlier below zero, as far as the slider goes. */
    public void step(int days) {
        day.set(Math.max(firstDay.get(), Math.min(lastDay.get(), day.get() + days)));
    }

    public void goToToday() {
        day.set(0);
    }

    /** Looks at the day of an instant, as near to it as the slider goes. */
    public void goTo(Instant instant) {
        long days = ChronoUnit.DAYS.between(today(), instant.atZone(zone()).toLocalDate());
        day.set((int) Math.max(firstDay.get(), Math.min(lastDay.get(), days)));
    }

    /** Reads the clock anew. */
    public void refresh() {
        LocalDate today = today();
        Instant now = clock.instant();
        Instant first = workspace.getCellar().batches().stream()
                .map(Batch::cappedAt)
                .flatMap(Optional::stream)
                .min(Instant::compareTo)
                .orElse(now);
        long days = ChronoUnit.DAYS.between(today, first.atZone(zone()).toLocalDate());
        firstDay.set((int) Math.min(-LEAST_DAYS_BACK, days));
        day.set(Math.max(firstDay.get(), Math.min(lastDay.get(), day.get())));
        show();
    }

    private void show() {
        int days = day.get();
        LocalDate date = today().plusDays(days);
        Instant noon = date.atTime(LocalTime.NOON).atZone(zone()).toInstant();
        UnitSystem units = workspace.getCellar().settings().units();
        String written = QuantityFormat.of(messages, units, zone()).day(date, clock.instant());
        if (days == 0) {
            label.set(messages.of("time.label.today", written));
        } else if (days < 0) {
            label.set(messages.of("time.label.past", -days, written));
        } else {
            label.set(messages.of("time.label.ahead", days, written));
        }
        asOf.set(days == 0 ? null : noon);
    }

    private LocalDate today() {
        return clock.instant().atZone(zone()).toLocalDate();
    }

    private ZoneId zone() {
        return workspace.getCellar().zone();
    }
}
