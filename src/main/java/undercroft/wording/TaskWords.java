package undercroft.wording;

import java.time.Instant;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.CauseFigure;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.task.Task;

/** What there is to do, and why, each in half a sentence. */
public record TaskWords(CellarOutlook outlook, Wording words) {
    /** A yeast wakes from here on, °C. */
    private static final double WAKING_CELSIUS = 16;

    public String what(Task task) {
        String name = outlook.cellar().batch(task.batchId()).name();
        return switch (task.kind()) {
            case COOL_BEFORE_TOUCHING ->
                "Cool " + name
                        + (is(task, Cause.Kind.READINGS_ABOVE_SUGAR) ? " and keep it cold" : " before touching it");
            case LOOK_AT_THE_OTHERS -> name + ": look at the other bottles";
            case MOVE_COOLER -> "Move " + name + " somewhere cooler";
            case COVER_FROM_LIGHT -> "Cover " + name + " from light";
            case MOVE_WARMER -> "Move " + name + " to a place of " + words.celsius(WAKING_CELSIUS) + " or more";
            case CHILL -> chill(plan(task), name);
            case CHECK_READINGS -> "Check the readings of " + name;
            case READ_GAUGE -> "Read the gauge on " + name;
            case FIRST_TASTE -> "First taste: " + name;
            case DRINK_SOON -> "Drink " + name + " soon";
            case CLOSE_BATCH -> "Close " + name;
        };
    }

    public String why(Task task) {
        BatchOutlook batch = outlook.batch(task.batchId());
        return switch (task.kind()) {
            case COOL_BEFORE_TOUCHING, LOOK_AT_THE_OTHERS, MOVE_COOLER, COVER_FROM_LIGHT, MOVE_WARMER, CHECK_READINGS ->
                cause(batch, task.cause().orElseThrow());
            case CHILL -> {
                ServingPlan plan = plan(task);
                yield "for " + words.moment(plan.serving().at()) + ": " + plan.why();
            }
            case READ_GAUGE ->
                "last read on " + words.day(since(task)) + "; expect about "
                        + words.bar(batch.mainLot().pressure().atPresent().median());
            case FIRST_TASTE ->
                Wording.percent(batch.mainLot().ready().probabilityNow()) + " likely ready; chill one bottle";
            case DRINK_SOON -> {
                AgeingOutlook ageing = batch.oldestLot().ageing();
                yield Wording.number(ageing.daysUsed().median(), 0) + " of "
                        + Wording.number(ageing.budgetDays().median(), 0) + " keeping days used";
            }
            case CLOSE_BATCH ->
                "its last bottle left on " + words.day(since(task)) + "; note what is worth keeping for the next one";
        };
    }

    private String chill(ServingPlan plan, String name) {
        String bottles = plan.serving().bottles() + " " + name;
        return plan.chillFrom()
                .map(from -> "Chill " + bottles + " by " + words.moment(from))
                .orElse("Too late to chill " + bottles + " in the fridge");
    }

    private String cause(BatchOutlook batch, Cause cause) {
        return switch (cause.kind()) {
            case BURST ->
                Wording.bottles((int) cause.figure(CauseFigure.BOTTLES)) + " burst on "
                        + words.day(cause.since().orElseThrow())
                        + "; cool the rest in closed boxes first, then read a gauge or open one outdoors";
            case STRONGEST_OVER_WORKING_PRESSURE -> {
                LotOutlook lot = lot(batch, cause);
                yield "the strongest of " + lot.left() + " in " + lot.place().name() + " may hold "
                        + words.bar(cause.figure(CauseFigure.STRONGEST_GAUGE_BAR)) + ", limit " + limit(cause);
            }
            case GLASS_WORN ->
                "its glass has borne up to "
                        + words.bar(cause.figure(CauseFigure.PEAK_PAST_GAUGE_BAR)) + " for a long time, limit "
                        + limit(cause);
            case PEAK_AHEAD_OVER_WORKING_PRESSURE ->
                "may reach "
                        + words.bar(cause.figure(CauseFigure.PEAK_AHEAD_GAUGE_BAR)) + " in the weeks ahead, limit "
                        + limit(cause);
            case READINGS_ABOVE_SUGAR ->
                "a reading shows more gas than its sugar can give: a wild or diastatic yeast may be at work";
            case READINGS_DISAGREE ->
                "they do not fit its sugar and temperatures: a date, a gauge or a dose may be wrong";
            case LIGHTSTRUCK_SOON, LIGHT_MAY_BE_TASTED, LIGHT_FALLS -> {
                LotOutlook lot = lot(batch, cause);
                yield lot.lot().colour().label() + " in the light of "
                        + lot.place().name() + ": " + lot.light().words();
            }
            case STALLED ->
                "stalled at " + words.celsius(cause.figure(CauseFigure.TEMPERATURE_CELSIUS)) + " with "
                        + Wording.percent(cause.figure(CauseFigure.FRACTION_DONE)) + " done";
            case TOO_HOT_FOR_YEAST ->
                "its yeast suffers at " + words.celsius(cause.figure(CauseFigure.TEMPERATURE_CELSIUS));
            case STRONGEST_OVER_CAUTION, LOW_HEAT_LIMIT, SLOW, PAST_BEST_BEFORE ->
                throw new IllegalArgumentException("nothing is to be done about " + cause.kind());
        };
    }

    private String limit(Cause cause) {
        return words.bar(cause.figure(CauseFigure.WORKING_PRESSURE_GAUGE_BAR));
    }

    private static LotOutlook lot(BatchOutlook batch, Cause cause) {
        return batch.lot(cause.lotId().orElseThrow());
    }

    private static boolean is(Task task, Cause.Kind kind) {
        return task.cause().map(Cause::kind).filter(kind::equals).isPresent();
    }

    private static Instant since(Task task) {
        return task.since().orElseThrow();
    }

    private ServingPlan plan(Task task) {
        return outlook.servings().stream()
                .filter(plan -> plan.serving().id().equals(task.part()))
                .findFirst()
                .orElseThrow();
    }
}
