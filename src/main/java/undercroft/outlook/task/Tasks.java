package undercroft.outlook.task;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.cellar.Reading;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchCalculator;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.quantity.Temperature;

/** What the shelf wants from a person in the next days. */
public final class Tasks {
    public static final Comparator<Task> MOST_URGENT_FIRST = Comparator.comparing(Task::alert)
            .reversed()
            .thenComparing(Task::kind)
            .thenComparing(Task::when)
            .thenComparing(Task::batchId);
    private static final Duration WEEK = Duration.ofDays(7);
    private static final Duration GAUGE_INTERVAL = Duration.ofDays(4);
    private static final long DAY_SECONDS = 86_400;
    private static final double WAKING_CELSIUS = 16;
    private static final LocalTime EVENING = LocalTime.of(18, 0);

    private final Wording words;
    private final List<Task> tasks = new ArrayList<>();

    public Tasks(Wording words) {
        this.words = words;
    }

    public List<Task> of(BatchOutlook whole) {
        Batch batch = whole.batch();
        Stage stage = whole.stage();
        if (stage == Stage.FILLING) {
            return List.of();
        }
        if (stage == Stage.EMPTY) {
            close(batch);
            return List.copyOf(tasks);
        }
        others(batch);
        for (LotOutlook lot : whole.lots()) {
            if (lot.left() > 0) {
                pressure(batch, lot);
                light(batch, lot);
            }
        }
        LotOutlook main = whole.mainLot();
        yeast(batch, main);
        readings(batch, whole.readings());
        gauge(batch, stage, main);
        firstTaste(batch, stage, main);
        drinkSoon(batch, whole.oldestLot());
        tasks.sort(MOST_URGENT_FIRST);
        return List.copyOf(tasks);
    }

    /** A batch drunk up lately wants its last word. */
    private void close(Batch batch) {
        batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .map(Draw::at)
                .filter(drawn -> !drawn.isAfter(words.at()))
                .max(Instant::compareTo)
                .filter(last -> last.isAfter(words.at().minus(WEEK.multipliedBy(2))))
                .ifPresent(last -> add(
                        Task.Kind.CLOSE_BATCH,
                        Alert.CLEAR,
                        words.at(),
                        batch,
                        "Close " + batch.name(),
                        "its last bottle left on " + words.day(last)
                                + "; note what is worth keeping for the next one"));
    }

    /** After a burst bottle the others are looked at, whatever the figures say. */
    private void others(Batch batch) {
        batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .filter(draw -> BatchCalculator.isLateBurst(draw, words.at()))
                .max(Comparator.comparing(Draw::at))
                .ifPresent(burst -> add(
                        Task.Kind.LOOK_AT_THE_OTHERS,
                        Alert.ACT,
                        words.at(),
                        batch,
                        "burst-" + burst.at().getEpochSecond() / DAY_SECONDS,
                        batch.name() + ": look at the other bottles",
                        Wording.bottles(burst.count()) + " burst on " + words.day(burst.at())
                                + "; cool the rest in closed boxes first, then read a gauge or open one outdoors"));
    }

    private void pressure(Batch batch, LotOutlook lot) {
        PressureOutlook pressure = lot.pressure();
        String limit = words.bar(pressure.workingPressureBar());
        if (pressure.strongestBottle().high() > pressure.workingPressureBar()) {
            add(
                    Task.Kind.COOL_BEFORE_TOUCHING,
                    Alert.ACT,
                    words.at(),
                    batch,
                    lot.lot().id(),
                    "Cool " + batch.name() + " before touching it",
                    "the strongest of " + lot.left() + " in " + lot.place().name() + " may hold "
                            + words.bar(pressure.strongestBottle().high()) + ", limit " + limit);
        } else if (pressure.isWorn()) {
            add(
                    Task.Kind.COOL_BEFORE_TOUCHING,
                    Alert.ACT,
                    words.at(),
                    batch,
                    lot.lot().id(),
                    "Cool " + batch.name() + " before touching it",
                    "its glass has borne up to " + words.bar(pressure.peakPast().high()) + " for a long time, limit "
                            + limit);
        } else if (pressure.peakAhead().high() > pressure.workingPressureBar()) {
            add(
                    Task.Kind.MOVE_COOLER,
                    Alert.ACT,
                    words.at(),
                    batch,
                    lot.lot().id(),
                    "Move " + batch.name() + " somewhere cooler",
                    "may reach " + words.bar(pressure.peakAhead().high()) + " in the weeks ahead, limit " + limit);
        }
    }

    private void light(Batch batch, LotOutlook lot) {
        if (lot.light().perDay() > 0.25 / 30 && lot.light().alert() != Alert.CLEAR) {
            add(
                    Task.Kind.COVER_FROM_LIGHT,
                    lot.light().alert(),
                    words.at(),
                    batch,
                    lot.lot().id(),
                    "Cover " + batch.name() + " from light",
                    lot.lot().colour().label() + " in the light of "
                            + lot.place().name() + ": " + lot.light().words());
        }
    }

    private void yeast(Batch batch, LotOutlook main) {
        String celsius = words.celsius(main.temperature().nowCelsius());
        if (main.progress() == LotOutlook.Progress.STALLED) {
            String warm = words.celsius(Temperature.ofCelsius(WAKING_CELSIUS).celsius());
            add(
                    Task.Kind.MOVE_WARMER,
                    Alert.WATCH,
                    words.at(),
                    batch,
                    "Move " + batch.name() + " to a place of " + warm + " or more",
                    "stalled at " + celsius + " with "
                            + Wording.percent(main.carbonation().fractionDone().median()) + " done");
        } else if (main.progress() == LotOutlook.Progress.TOO_HOT) {
            add(
                    Task.Kind.MOVE_COOLER,
                    Alert.WATCH,
                    words.at(),
                    batch,
                    "Move " + batch.name() + " somewhere cooler",
                    "its yeast suffers at " + celsius);
        }
    }

    private void readings(Batch batch, Agreement readings) {
        if (readings == Agreement.NEEDS_EXTRA_EXTRACT) {
            add(
                    Task.Kind.COOL_BEFORE_TOUCHING,
                    Alert.ACT,
                    words.at(),
                    batch,
                    "Cool " + batch.name() + " and keep it cold",
                    "a reading shows more gas than its sugar can give: a wild or diastatic yeast may be at work");
        } else if (readings == Agreement.DISAGREES) {
            add(
                    Task.Kind.CHECK_READINGS,
                    Alert.WATCH,
                    words.at(),
                    batch,
                    "Check the readings of " + batch.name(),
                    "they do not fit its sugar and temperatures: a date, a gauge or a dose may be wrong");
        }
    }

    private void gauge(Batch batch, Stage stage, LotOutlook main) {
        Instant newest = batch.readings().stream()
                .filter(reading ->
                        reading instanceof Reading.Gauge && !reading.at().isAfter(words.at()))
                .map(Reading::at)
                .max(Instant::compareTo)
                .orElse(null);
        if (stage == Stage.CARBONATING && newest != null) {
            Instant due = newest.plus(GAUGE_INTERVAL);
            if (due.isBefore(words.at().plus(WEEK))) {
                add(
                        Task.Kind.READ_GAUGE,
                        Alert.CLEAR,
                        due.isBefore(words.at()) ? words.at() : due,
                        batch,
                        "Read the gauge on " + batch.name(),
                        "last read on " + words.day(newest) + "; expect about "
                                + words.bar(main.pressure().atPresent().median()));
            }
        }
    }

    private void firstTaste(Batch batch, Stage stage, LotOutlook main) {
        boolean opened = batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .anyMatch(draw -> draw.fate() == Draw.Fate.OPENED && !draw.at().isAfter(words.at()));
        if (opened || stage == Stage.PAST_BEST_BEFORE || main.ready().median().isEmpty()) {
            return;
        }
        Instant ready = evening(main.ready().median().get());
        if (ready.isBefore(words.at().plus(WEEK))) {
            add(
                    Task.Kind.FIRST_TASTE,
                    Alert.CLEAR,
                    ready.isBefore(words.at()) ? words.at() : ready,
                    batch,
                    "First taste: " + batch.name(),
                    Wording.percent(main.ready().probabilityNow()) + " likely ready; chill one bottle");
        }
    }

    /** The first evening from an instant on: nobody tastes beer at three in the morning. */
    private Instant evening(Instant instant) {
        ZonedDateTime local = instant.atZone(words.zone());
        ZonedDateTime six = local.with(EVENING);
        return (six.isBefore(local) ? six.plusDays(1) : six).toInstant();
    }

    private void drinkSoon(Batch batch, LotOutlook oldest) {
        oldest.ageing().bestBefore().ifPresent(end -> {
            Instant ends = end.atStartOfDay(words.zone()).toInstant();
            if (ends.isBefore(words.at().plus(WEEK.multipliedBy(2)))) {
                add(
                        Task.Kind.DRINK_SOON,
                        Alert.WATCH,
                        words.at(),
                        batch,
                        "Drink " + batch.name() + " soon",
                        Wording.number(oldest.ageing().daysUsed().median(), 0) + " of "
                                + Wording.number(oldest.ageing().budgetDays().median(), 0) + " keeping days used");
            }
        });
    }

    private void add(Task.Kind kind, Alert alert, Instant when, Batch batch, String what, String why) {
        add(kind, alert, when, batch, "", what, why);
    }

    private void add(Task.Kind kind, Alert alert, Instant when, Batch batch, String lotId, String what, String why) {
        tasks.add(new Task(kind, alert, when, batch.id(), lotId, what, why));
    }
}
