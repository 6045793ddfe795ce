package undercroft.outlook.task;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.outlook.lot.Verdict;
import undercroft.outlook.serving.ServingPlan;

/** What the shelf wants from a person in the next days: it follows from the verdicts of its lots and from what is planned. */
public final class Tasks {
    private static final Comparator<Task> MOST_URGENT_FIRST = Comparator.comparing(Task::alert)
            .reversed()
            .thenComparing(Task::kind)
            .thenComparing(Task::when)
            .thenComparing(Task::batchId);
    private static final Duration WEEK = Duration.ofDays(7);
    private static final Duration GAUGE_INTERVAL = Duration.ofDays(4);
    private static final Duration GAUGE_DAILY = Duration.ofDays(1);
    private static final Duration CHILL_NOTICE = Duration.ofDays(4);
    private static final Set<Cause.Kind> STUCK =
            EnumSet.of(Cause.Kind.BEYOND_ALCOHOL_LIMIT, Cause.Kind.NO_SUGAR, Cause.Kind.READINGS_STAND_STILL);
    private static final long DAY_SECONDS = 86_400;
    private static final LocalTime EVENING = LocalTime.of(18, 0);

    private final Cellar cellar;
    private final Instant at;
    private final List<Task> tasks = new ArrayList<>();

    private Tasks(Cellar cellar, Instant at) {
        this.cellar = cellar;
        this.at = at;
    }

    /** All that is to do, most urgent first, without what a person put away. */
    public static List<Task> of(Cellar cellar, List<BatchOutlook> batches, List<ServingPlan> servings, Instant at) {
        Tasks tasks = new Tasks(cellar, at);
        batches.forEach(tasks::batch);
        servings.forEach(tasks::chill);
        return tasks.tasks.stream()
                .filter(task -> !tasks.isPutAway(task))
                .sorted(MOST_URGENT_FIRST)
                .toList();
    }

    private boolean isPutAway(Task task) {
        return cellar.taskNotes().stream().anyMatch(note -> note.taskKey().equals(task.key()) && note.holdsAt(at));
    }

    private void batch(BatchOutlook batch) {
        Stage stage = batch.stage();
        if (stage == Stage.FILLING) {
            return;
        }
        if (stage == Stage.EMPTY) {
            close(batch.batch());
            return;
        }
        bursts(batch);
        readings(batch);
        for (LotOutlook lot : batch.lots()) {
            danger(batch, lot);
            light(batch, lot);
            yeast(batch, lot);
        }
        label(batch);
        gauge(batch);
        firstTaste(batch);
        drinkSoon(batch);
    }

    /** A batch drunk up lately wants its last word. */
    private void close(Batch batch) {
        draws(batch, draw -> true)
                .map(Draw::at)
                .max(Instant::compareTo)
                .filter(last -> last.isAfter(at.minus(WEEK.multipliedBy(2))))
                .ifPresent(last -> tasks.add(new Task(
                        Task.Kind.CLOSE_BATCH, Alert.CLEAR, at, batch.id(), "", Optional.of(last), Optional.empty())));
    }

    /** After a burst the other bottles are looked at, and once it is settled a reading is wanted that bears it out. */
    private void bursts(BatchOutlook batch) {
        newest(batch, Cause.Kind.BURST)
                .ifPresent(burst -> add(Task.Kind.LOOK_AT_THE_OTHERS, batch, "burst-" + day(burst), burst));
        newest(batch, Cause.Kind.BURST_SETTLED)
                .ifPresent(burst -> add(Task.Kind.READ_AFTER_BURST, batch, "burst-" + day(burst), burst));
    }

    private static Optional<Cause> newest(BatchOutlook batch, Cause.Kind kind) {
        return batch.verdict().causes().stream()
                .filter(cause -> cause.kind() == kind)
                .max(Comparator.comparing(cause -> cause.since().orElseThrow()));
    }

    private static long day(Cause cause) {
        return cause.since().orElseThrow().getEpochSecond() / DAY_SECONDS;
    }

    private void readings(BatchOutlook batch) {
        batch.verdict()
                .leading(Cause.Topic.READINGS)
                .ifPresent(cause -> add(
                        cause.kind() == Cause.Kind.READINGS_ABOVE_SUGAR
                                ? firstThing(batch.mainLot())
                                : Task.Kind.CHECK_READINGS,
                        batch,
                        "",
                        cause));
    }

    /** One task a lot, for the gravest of its figures; what is to be done is the same everywhere. */
    private void danger(BatchOutlook batch, LotOutlook lot) {
        lot.verdict().causes().stream()
                .filter(cause -> cause.alert() == Alert.ACT
                        && (cause.kind().topic() == Cause.Topic.PRESSURE
                                || cause.kind().topic() == Cause.Topic.FROST)
                        && cause.kind() != Cause.Kind.BURST)
                .findFirst()
                .ifPresent(cause -> add(firstThing(lot), batch, lot.id(), cause));
        lot.verdict()
                .leading(Cause.Topic.FROST)
                .filter(cause -> cause.kind() == Cause.Kind.FROZEN && cause.alert() == Alert.WATCH)
                .ifPresent(cause -> add(Task.Kind.MOVE_FROM_FROST, batch, lot.id(), cause));
    }

    private static Task.Kind firstThing(LotOutlook lot) {
        return switch (lot.handling()) {
            case COOL_WHERE_IT_STANDS -> Task.Kind.COOL_BEFORE_TOUCHING;
            case OPEN_COLD -> Task.Kind.OPEN_COLD;
            case THAW_IN_THE_COLD -> Task.Kind.THAW_IN_THE_COLD;
            case MOVE_NOW, NONE -> Task.Kind.MOVE_COOLER;
        };
    }

    /** Bottles that had light but stand in the dark now need no cover. */
    private void light(BatchOutlook batch, LotOutlook lot) {
        Verdict verdict = lot.verdict();
        if (verdict.has(Cause.Kind.LIGHT_FALLS)) {
            add(
                    Task.Kind.COVER_FROM_LIGHT,
                    batch,
                    lot.id(),
                    verdict.leading(Cause.Topic.LIGHT).orElseThrow());
        }
    }

    private void yeast(BatchOutlook batch, LotOutlook lot) {
        for (Cause cause : lot.verdict().causes()) {
            if (cause.kind() == Cause.Kind.STALLED) {
                add(Task.Kind.MOVE_WARMER, batch, lot.id(), cause);
            } else if (cause.kind() == Cause.Kind.TOO_HOT_FOR_YEAST) {
                add(Task.Kind.MOVE_COOLER, batch, lot.id(), cause);
            } else if (STUCK.contains(cause.kind())) {
                add(Task.Kind.CHECK_CARBONATION, batch, lot.id(), cause);
            }
        }
    }

    /** Paper that says a higher heat limit than there is. */
    private void label(BatchOutlook batch) {
        batch.batch()
                .packaging()
                .label()
                .filter(label -> label.misleads(batch.heatLimitLot().pressure().heatLimitCelsius()))
                .ifPresent(label -> tasks.add(new Task(
                        Task.Kind.PRINT_LABEL,
                        Alert.WATCH,
                        at,
                        batch.id(),
                        "label-" + label.at().getEpochSecond() / DAY_SECONDS,
                        Optional.of(label.at()),
                        Optional.empty())));
    }

    private void gauge(BatchOutlook batch) {
        List<LotOutlook> experiments = batch.lots().stream()
                .filter(lot ->
                        lot.lot().gauge().filter(gauge -> gauge.isReadAt(at)).isPresent())
                .toList();
        experiments.forEach(lot -> experiment(batch, lot));
        if (experiments.isEmpty()) {
            nowAndThen(batch);
        }
    }

    /** Read daily until the gauge stands still; then that bottle is opened and tasted. */
    private void experiment(BatchOutlook batch, LotOutlook lot) {
        FittedGauge gauge = lot.lot().gauge().orElseThrow();
        Optional<Instant> plateau = lot.stuck().plateauSince();
        Optional<Instant> newest = batch.batch().readings().stream()
                .filter(reading -> !reading.at().isAfter(at)
                        && reading instanceof Reading.Gauge read
                        && gauge.isOwn(read, lot.id()))
                .map(Reading::at)
                .max(Instant::compareTo);
        Instant due = plateau.isPresent()
                ? at
                : notPast(newest.map(read -> read.plus(GAUGE_DAILY)).orElse(at));
        tasks.add(new Task(
                plateau.isPresent() ? Task.Kind.OPEN_GAUGE_BOTTLE : Task.Kind.READ_GAUGE_DAILY,
                Alert.CLEAR,
                due,
                batch.id(),
                lot.id(),
                Optional.of(plateau.or(() -> newest).orElse(gauge.from())),
                Optional.empty()));
    }

    private void nowAndThen(BatchOutlook batch) {
        batch.batch().readings().stream()
                .filter(reading ->
                        reading instanceof Reading.Gauge && !reading.at().isAfter(at))
                .map(Reading::at)
                .max(Instant::compareTo)
                .filter(newest -> batch.stage() == Stage.CARBONATING)
                .ifPresent(newest -> {
                    Instant due = newest.plus(GAUGE_INTERVAL);
                    if (due.isBefore(at.plus(WEEK))) {
                        tasks.add(new Task(
                                Task.Kind.READ_GAUGE,
                                Alert.CLEAR,
                                notPast(due),
                                batch.id(),
                                "",
                                Optional.of(newest),
                                Optional.empty()));
                    }
                });
    }

    private void firstTaste(BatchOutlook batch) {
        boolean opened = draws(batch.batch(), draw -> draw.fate() == Draw.Fate.OPENED)
                .findAny()
                .isPresent();
        Optional<Instant> median = batch.mainLot().ready().median();
        if (opened || batch.stage() == Stage.PAST_BEST_BEFORE || median.isEmpty()) {
            return;
        }
        Instant ready = evening(median.get());
        if (ready.isBefore(at.plus(WEEK))) {
            reminder(Task.Kind.FIRST_TASTE, Alert.CLEAR, notPast(ready), batch);
        }
    }

    /** The first evening from an instant on: nobody tastes beer at three in the morning. */
    private Instant evening(Instant instant) {
        ZonedDateTime local = instant.atZone(cellar.zone());
        ZonedDateTime six = local.with(EVENING);
        return (six.isBefore(local) ? six.plusDays(1) : six).toInstant();
    }

    private void drinkSoon(BatchOutlook batch) {
        batch.oldestLot().ageing().bestBefore().ifPresent(end -> {
            Instant ends = end.atStartOfDay(cellar.zone()).toInstant();
            if (ends.isBefore(at.plus(WEEK.multipliedBy(2)))) {
                reminder(Task.Kind.DRINK_SOON, Alert.WATCH, at, batch);
            }
        });
    }

    private void chill(ServingPlan plan) {
        boolean waiting = plan.chillFrom().map(from -> !from.isBefore(at)).orElse(true);
        Instant when = plan.chillFrom().orElse(at);
        if (waiting && when.isBefore(at.plus(CHILL_NOTICE))) {
            tasks.add(new Task(
                    Task.Kind.CHILL,
                    Alert.WATCH,
                    when,
                    plan.serving().batchId(),
                    plan.serving().id(),
                    Optional.empty(),
                    Optional.empty()));
        }
    }

    private Stream<Draw> draws(Batch batch, Predicate<Draw> wanted) {
        return batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .filter(draw -> !draw.at().isAfter(at) && wanted.test(draw));
    }

    private Instant notPast(Instant due) {
        return due.isBefore(at) ? at : due;
    }

    private void add(Task.Kind kind, BatchOutlook batch, String part, Cause cause) {
        tasks.add(new Task(kind, cause.alert(), at, batch.id(), part, cause.since(), Optional.of(cause)));
    }

    private void reminder(Task.Kind kind, Alert alert, Instant when, BatchOutlook batch) {
        tasks.add(new Task(kind, alert, when, batch.id(), "", Optional.empty(), Optional.empty()));
    }
}
