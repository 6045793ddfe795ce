package undercroft.report;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.TemporalAmount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.RRule;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableAction;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import undercroft.cellar.Draw;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.ReadyOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.task.Task;
import undercroft.wording.Keys;
import undercroft.wording.ServingWords;
import undercroft.wording.ShelfWords;

/** What a batch puts into a calendar. */
final class CalendarEntries {
    private static final Duration PUTTING_IN = Duration.ofMinutes(15);
    private static final int DAYS_OF_READING = 21;
    private static final Duration EVENING = Duration.ofHours(2);
    private static final Period BEFORE_BEST = Period.ofDays(14);

    private final CellarOutlook outlook;
    private final BatchOutlook batch;
    private final Instant stamp;
    private final ShelfWords words;

    CalendarEntries(ShelfWords words, BatchOutlook batch, Instant stamp) {
        this.outlook = words.outlook();
        this.batch = batch;
        this.stamp = stamp;
        this.words = words;
    }

    List<VEvent> all() {
        List<VEvent> events = new ArrayList<>();
        for (ServingPlan plan : outlook.servings()) {
            if (plan.serving().batchId().equals(batch.id())) {
                chill(plan).ifPresent(events::add);
                events.add(serving(plan));
            }
        }
        if (batch.isCapped() && batch.bottlesLeft() > 0) {
            firstTaste().ifPresent(events::add);
            bestBefore().ifPresent(events::add);
        }
        for (Task task : outlook.tasks()) {
            if (task.kind() == Task.Kind.READ_GAUGE_DAILY && task.batchId().equals(batch.id())) {
                events.add(gauge(task));
            }
        }
        return events;
    }

    /** Every day for as long as an experiment usually takes; the next export tells how it went on. */
    private VEvent gauge(Task task) {
        VEvent event = new VEvent(task.when(), task.when().plus(PUTTING_IN), words.of("calendar.gauge", name()));
        finish(event, "gauge/" + task.part(), words.of("calendar.gauge.text"));
        event.add(new RRule<>("FREQ=DAILY;COUNT=" + DAYS_OF_READING));
        event.add(alarm(Duration.ZERO, words.of("calendar.gauge", name())));
        return event;
    }

    /** The cold place's name, or what the kind of cold is called. */
    private String where(Serving serving) {
        return serving.placeId()
                .map(id -> outlook.cellar().place(id).name())
                .orElseGet(() -> words.of(Keys.of("calendar.cold", serving.coolingMedium())));
    }

    private Optional<VEvent> chill(ServingPlan plan) {
        return plan.chillFrom().filter(from -> !from.isBefore(outlook.at())).map(from -> {
            String what = words.of("calendar.chill", plan.serving().bottles(), name());
            VEvent event = new VEvent(from, from.plus(PUTTING_IN), what);
            finish(
                    event,
                    "chill/" + plan.serving().id(),
                    words.format().messages().sentence(new ServingWords(words).why(plan)));
            event.add(new Location(where(plan.serving())));
            event.add(alarm(PUTTING_IN.negated(), what));
            return event;
        });
    }

    private VEvent serving(ServingPlan plan) {
        Instant at = plan.serving().at();
        VEvent event = new VEvent(
                at,
                at.plus(EVENING),
                words.of("calendar.serving", plan.serving().bottles(), name()));
        String note = plan.serving().note().isEmpty() ? "" : plan.serving().note() + "\n";
        finish(event, "pour/" + plan.serving().id(), note + new ServingWords(words).pouring());
        Duration warming = Duration.between(plan.takeOut(), at);
        if (warming.compareTo(Duration.ofMinutes(3)) >= 0) {
            event.add(alarm(
                    warming.negated(), words.of("calendar.out", plan.serving().bottles(), name())));
        }
        return event;
    }

    private Optional<VEvent> firstTaste() {
        boolean opened = batch.batch().lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .anyMatch(draw -> draw.fate() == Draw.Fate.OPENED && !draw.at().isAfter(outlook.at()));
        ReadyOutlook ready = batch.mainLot().ready();
        if (opened || ready.median().isEmpty() || ready.median().get().isBefore(outlook.at())) {
            return Optional.empty();
        }
        LocalDate day = ready.median().get().atZone(outlook.cellar().zone()).toLocalDate();
        VEvent event = new VEvent(day, words.of("calendar.first-taste", name()));
        finish(
                event,
                "first-taste",
                words.of("calendar.first-taste.text", dayOrNever(ready.early()), dayOrNever(ready.late())));
        event.add(alarm(Period.ofDays(-1), words.of("calendar.first-taste.alarm", name())));
        return Optional.of(event);
    }

    private Optional<VEvent> bestBefore() {
        return batch.oldestLot().ageing().bestBefore().map(day -> {
            VEvent event = new VEvent(day, words.of("calendar.best-before", name()));
            finish(event, "best-before", words.of("calendar.best-before.text"));
            event.add(alarm(BEFORE_BEST.negated(), words.of("calendar.best-before.alarm", name())));
            return event;
        });
    }

    /** What every entry has; it blocks no time, since nobody is busy with a bottle in a fridge. */
    private void finish(VEvent event, String part, String description) {
        event.removeAll("DTSTAMP");
        event.add(new DtStamp(stamp));
        event.add(uid(part));
        event.add(new Description(description));
        event.add(ImmutableTransp.TRANSPARENT);
    }

    /** From names alone, so that it stays when dates and numbers change. */
    private Uid uid(String part) {
        String whole = outlook.cellar().name() + "/" + batch.id() + "/" + part;
        return new Uid(UUID.nameUUIDFromBytes(whole.getBytes(StandardCharsets.UTF_8)) + "@undercroft.invalid");
    }

    private static VAlarm alarm(TemporalAmount before, String words) {
        VAlarm alarm = new VAlarm(before);
        alarm.add(ImmutableAction.DISPLAY);
        alarm.add(new Description(words));
        return alarm;
    }

    private String dayOrNever(Optional<Instant> day) {
        return day.map(words::day).orElseGet(() -> words.of("figure.ready.never"));
    }

    private String name() {
        return batch.batch().name();
    }
}
