package undercroft.wording;

import java.time.Instant;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.CauseFigure;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.task.Task;

/** What there is to do, and why, each in half a sentence. */
public record TaskWords(ShelfWords words) {
    /** An ale yeast wakes from here on, °C. */
    private static final double WAKING_CELSIUS = 16;

    public String what(Task task) {
        String name = words.outlook().cellar().batch(task.batchId()).name();
        return switch (task.kind()) {
            case COOL_BEFORE_TOUCHING ->
                words.of(
                        task.cause().orElseThrow().kind() == Cause.Kind.READINGS_ABOVE_SUGAR
                                ? "task.what.keep-cold"
                                : "task.what.cool-before-touching",
                        name);
            case MOVE_COOLER ->
                words.of(
                        task.cause().orElseThrow().kind() == Cause.Kind.OVER_IN_WARMEST_WEEK
                                ? "task.what.move-before-summer"
                                : "task.what.move-cooler",
                        name);
            case MOVE_WARMER ->
                words.of("task.what.move-warmer", name, words.format().wholeCelsius(WAKING_CELSIUS));
            case CHILL -> chill(plan(task), name);
            case DRINK_SOON ->
                words.of(oldest(task).isPastBestBefore() ? "task.what.drink-soon" : "task.what.drink-before", name);
            default -> words.of(Keys.of("task.what", task.kind()), name);
        };
    }

    public String why(Task task) {
        BatchOutlook batch = words.outlook().batch(task.batchId());
        return switch (task.kind()) {
            case COOL_BEFORE_TOUCHING,
                    THAW_IN_THE_COLD,
                    LOOK_AT_THE_OTHERS,
                    OPEN_COLD,
                    MOVE_COOLER,
                    MOVE_FROM_FROST,
                    READ_AFTER_BURST,
                    COVER_FROM_LIGHT,
                    MOVE_WARMER,
                    CHECK_READINGS,
                    CHECK_CARBONATION -> cause(batch, task.cause().orElseThrow());
            case CHILL -> {
                ServingPlan plan = plan(task);
                yield words.of(
                        "task.why.chill",
                        words.format().weekdayAndTime(plan.serving().at()),
                        new ServingWords(words).why(plan));
            }
            case READ_GAUGE ->
                words.of(
                        "task.why.read-gauge",
                        words.day(since(task)),
                        words.format()
                                .bar(batch.mainLot().pressure().atPresent().median()));
            case PRINT_LABEL ->
                words.of(
                        "task.why.print-label",
                        words.day(since(task)),
                        words.format().heatLimit(labelLimit(batch)),
                        words.format().heatLimit(batch.heatLimitLot().pressure().heatLimitCelsius()));
            case READ_GAUGE_DAILY ->
                words.of(
                        "task.why.read-gauge-daily",
                        words.day(since(task)),
                        words.format()
                                .bar(batch.lot(task.part())
                                        .pressure()
                                        .atPresent()
                                        .median()));
            case OPEN_GAUGE_BOTTLE -> words.of("task.why.open-gauge-bottle", words.day(since(task)));
            case FIRST_TASTE ->
                words.of(
                        "task.why.first-taste",
                        words.format().percent(batch.mainLot().ready().probabilityNow()));
            case DRINK_SOON ->
                words.of(
                        "task.why.shelf-life",
                        words.format().number(oldest(task).daysUsed().median(), 0),
                        words.format().number(oldest(task).budgetDays().median(), 0));
            case CLOSE_BATCH -> words.of("task.why.close-batch", words.day(since(task)));
        };
    }

    private String chill(ServingPlan plan, String name) {
        int bottles = plan.serving().bottles();
        return plan.chillFrom()
                .map(from -> words.of(
                        "task.what.chill", name, bottles, words.format().weekdayAndTime(from)))
                .orElseGet(() -> words.of("task.what.chill-too-late", name, bottles));
    }

    private String cause(BatchOutlook batch, Cause cause) {
        return switch (cause.kind()) {
            case BURST ->
                words.of(
                        "task.why.burst",
                        (int) cause.figure(CauseFigure.BOTTLES),
                        words.day(cause.since().orElseThrow()));
            case BURST_SETTLED ->
                words.of(
                        "task.why.burst-settled",
                        (int) cause.figure(CauseFigure.BOTTLES),
                        words.day(cause.since().orElseThrow()));
            case FROZEN, WAS_FROZEN ->
                words.of(
                        cause.alert() == Alert.ACT ? "task.why.frozen" : "task.why.frost",
                        words.format().celsius(cause.figure(CauseFigure.COLDEST_CELSIUS)),
                        words.format().celsius(cause.figure(CauseFigure.FREEZING_CELSIUS)));
            case PEAK_PAST_OVER_WORKING_PRESSURE ->
                words.of(
                        "task.why.past-peak",
                        worst(cause, CauseFigure.PEAK_PAST_GAUGE_BAR),
                        words.day(cause.since().orElseThrow()),
                        working(cause));
            case BEYOND_ALCOHOL_LIMIT, NO_SUGAR, READINGS_STAND_STILL -> new StuckWords(words).sentence(batch, cause);
            case STRONGEST_OVER_WORKING_PRESSURE ->
                words.of(
                        "task.why.over",
                        lot(batch, cause).left(),
                        lot(batch, cause).place().name(),
                        worst(cause, CauseFigure.STRONGEST_GAUGE_BAR),
                        working(cause));
            case GLASS_WORN -> words.of("task.why.worn", worst(cause, CauseFigure.PEAK_PAST_GAUGE_BAR), working(cause));
            case PEAK_AHEAD_OVER_WORKING_PRESSURE ->
                words.of("task.why.ahead", worst(cause, CauseFigure.PEAK_AHEAD_GAUGE_BAR), working(cause));
            case OVER_IN_WARMEST_WEEK -> new PressureWords(words).inWarmestWeek("task.why.summer", batch, cause);
            case READINGS_ABOVE_SUGAR -> words.of("task.why.above-sugar");
            case READINGS_DISAGREE -> words.of("task.why.disagree");
            case LIGHTSTRUCK_SOON, LIGHT_MAY_BE_TASTED, LIGHT_FALLS ->
                words.of(
                        "task.why.light",
                        lot(batch, cause).lot().colour(),
                        lot(batch, cause).place().name(),
                        new FigureWords(words).light(lot(batch, cause).light()));
            case STALLED ->
                words.of(
                        "task.why.stalled",
                        celsius(cause),
                        words.format().percent(cause.figure(CauseFigure.FRACTION_DONE)));
            case TOO_HOT_FOR_YEAST -> words.of("task.why.too-hot", celsius(cause));
            case STRONGEST_OVER_CAUTION, OLD_PEAK_OVER_WORKING_PRESSURE, SLOW, PAST_BEST_BEFORE ->
                throw new IllegalArgumentException("nothing is to be done about " + cause.kind());
        };
    }

    private String worst(Cause cause, CauseFigure figure) {
        return words.format().barWorst(cause.figure(figure));
    }

    private String working(Cause cause) {
        return words.format().barLimit(cause.figure(CauseFigure.WORKING_PRESSURE_GAUGE_BAR));
    }

    private String celsius(Cause cause) {
        return words.format().wholeCelsius(cause.figure(CauseFigure.TEMPERATURE_CELSIUS));
    }

    private AgeingOutlook oldest(Task task) {
        return words.outlook().batch(task.batchId()).oldestLot().ageing();
    }

    private static double labelLimit(BatchOutlook batch) {
        return batch.batch().packaging().label().orElseThrow().heatLimitCelsius();
    }

    private static LotOutlook lot(BatchOutlook batch, Cause cause) {
        return batch.lot(cause.lotId().orElseThrow());
    }

    private static Instant since(Task task) {
        return task.since().orElseThrow();
    }

    private ServingPlan plan(Task task) {
        return words.outlook().servings().stream()
                .filter(plan -> plan.serving().id().equals(task.part()))
                .findFirst()
                .orElseThrow();
    }
}
