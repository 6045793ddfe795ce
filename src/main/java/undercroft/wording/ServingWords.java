package undercroft.wording;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import undercroft.catalogue.CoolingMedium;
import undercroft.cellar.Serving;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.serving.Chilling;
import undercroft.outlook.serving.Concern;
import undercroft.outlook.serving.ServingChoice;
import undercroft.outlook.serving.ServingPlan;

/** Why bottles go into the cold when they do, what stands in the way, and which batch suits a day. */
public record ServingWords(ShelfWords words) {
    /** So short a time at the table needs no word. */
    private static final double SOME_MINUTES = 3;
    /** From here on a time is told in hours. */
    private static final double HOURS_FROM_MINUTES = 90;

    /** The plan counted back, in half a sentence. */
    public String why(ServingPlan plan) {
        String unready = plan.readyByThen() ? "" : words.of("serving.why.unready");
        if (plan.inTheCold()) {
            return words.of("serving.why.cold", words.day(plan.chillFrom().orElseThrow()), takeOut(plan) + unready);
        }
        if (plan.chillFrom().isEmpty()) {
            return words.of("serving.why.too-late", unready);
        }
        Chilling chilling = plan.chilling();
        QuantityFormat format = words.format();
        return chilling.coolingMedium().isGoodForResting()
                ? words.of(
                        "serving.why.rest",
                        time(chilling.coolingMinutes()),
                        format.wholeCelsius(chilling.fromCelsius()),
                        format.wholeCelsius(chilling.coldCelsius() + 1),
                        coldPlace(plan.serving()),
                        time(60 * chilling.clearingHours()),
                        takeOut(plan) + unready)
                : words.of(
                        "serving.why.quick",
                        minutes(chilling.coolingMinutes()),
                        format.wholeCelsius(chilling.fromCelsius()),
                        format.wholeCelsius(chilling.bottleCelsius()),
                        chilling.coolingMedium(),
                        unready);
    }

    /** Where the bottles of a serving get cold. */
    public String coldPlace(Serving serving) {
        if (serving.placeId().isPresent()) {
            return words.of(
                    "serving.place.named",
                    words.outlook().cellar().place(serving.placeId().get()).name());
        }
        return serving.coolingMedium() == CoolingMedium.STILL_FRIDGE
                ? words.of("serving.place.kitchen-fridge")
                : words.name(serving.coolingMedium());
    }

    /** How to pour beer that has its yeast in the bottle; common practice, no source. */
    public String pouring() {
        return words.of("serving.pouring");
    }

    /** What stands in the way, with what to do. */
    public String concern(ServingPlan plan, Concern concern) {
        QuantityFormat format = words.format();
        BatchOutlook batch = words.outlook().batch(plan.serving().batchId());
        LotOutlook lot = batch.lot(plan.chilling().lotId());
        return switch (concern.kind()) {
            case PRESSURE -> words.of("serving.concern.pressure");
            case NEVER_READY ->
                words.of("serving.concern.never-ready", lot.place().name());
            case MAY_NOT_BE_READY -> {
                Instant median = lot.ready().median().orElseThrow();
                String likely = format.percent(plan.probabilityReady());
                yield median.isAfter(words.at())
                        ? words.of("serving.concern.not-ready", likely, words.day(median))
                        : words.of("serving.concern.perhaps-ready", likely);
            }
            case SAME_BOTTLES ->
                words.of(
                        plan.promised() == plan.serving().bottles()
                                ? "serving.concern.same-alone"
                                : "serving.concern.same-together",
                        plan.promised(),
                        batch.bottlesLeft());
            case TOO_LATE -> tooLate(plan);
            case TOO_WARM_A_PLACE ->
                words.of(
                        "serving.concern.warm-place",
                        coldPlace(plan.serving()),
                        format.wholeCelsius(plan.chilling().coldCelsius()),
                        format.wholeCelsius(plan.chilling().wantedCelsius()));
            case TOO_LONG_IN_FREEZER -> words.of("serving.concern.freezer-long", freezer(plan));
            case FREEZER_ALARM -> words.of("serving.concern.freezer-alarm", freezer(plan));
        };
    }

    private String tooLate(ServingPlan plan) {
        Instant dip = Instant.ofEpochSecond(plan.quick().putInEpochSecond());
        String minutes = minutes(Math.max(1, plan.quick().minutes()));
        return dip.isBefore(words.at())
                ? words.of("serving.concern.dip-now", minutes, freezer(plan))
                : words.of(
                        "serving.concern.dip-later",
                        minutes,
                        freezer(plan),
                        words.format().weekdayAndTime(dip));
    }

    /** Rounded down: after that the beer may freeze. */
    private String freezer(ServingPlan plan) {
        return words.of(
                "serving.time.minutes", words.format().numberDown(plan.quick().freezerMinutes(), 0));
    }

    /** What speaks for a batch and against it. */
    public List<String> reasons(ServingChoice choice) {
        BatchOutlook batch = words.outlook().batch(choice.batchId());
        List<String> reasons = new ArrayList<>();
        reasons.add(
                choice.mayBeReady()
                        ? words.of("serving.choice.likely", words.format().percent(choice.probabilityReady()))
                        : words.of("serving.choice.not-ready"));
        choice.reasons().stream()
                .filter(reason -> reason != ServingChoice.Reason.OVER_WORKING_PRESSURE)
                .forEach(reason -> reasons.add(reason(choice, batch, reason)));
        reasons.add(number(choice));
        if (choice.reasons().contains(ServingChoice.Reason.OVER_WORKING_PRESSURE)) {
            reasons.add(words.of("serving.choice.over"));
        }
        return reasons;
    }

    private String number(ServingChoice choice) {
        if (!choice.enough()) {
            return words.of("serving.choice.only", choice.free());
        }
        return choice.promised() > 0
                ? words.of("serving.choice.free-promised", choice.free(), choice.promised())
                : words.of("serving.choice.free", choice.free());
    }

    private String reason(ServingChoice choice, BatchOutlook batch, ServingChoice.Reason reason) {
        return switch (reason) {
            case PAST_BEST_BEFORE -> words.of("serving.choice.past-best-before");
            case BEST_BEFORE_SOON ->
                words.of(
                        "serving.choice.best-before",
                        words.day(batch.oldestLot().ageing().bestBefore().orElseThrow()));
            case LIGHT ->
                words.of(
                        "serving.choice.light",
                        new FigureWords(words).light(batch.brightestLot().light()));
            case NEAR_WORKING_PRESSURE -> {
                PressureOutlook pressure = batch.limitingLot().pressure();
                yield words.of(
                        "serving.choice.near",
                        words.format().barWorst(pressure.peakAhead().high()),
                        words.format().barLimit(pressure.workingPressureBar()));
            }
            case WARM_SPELLS -> words.of("serving.choice.spells", Math.round(choice.shelfDaysCost()));
            case OVER_WORKING_PRESSURE -> words.of("serving.choice.over");
        };
    }

    private String takeOut(ServingPlan plan) {
        double warming = plan.chilling().warmingMinutes();
        return warming < SOME_MINUTES
                ? ""
                : words.of("serving.why.take-out", words.format().weekdayAndTime(plan.takeOut()), minutes(warming));
    }

    private String time(double minutes) {
        return minutes < HOURS_FROM_MINUTES
                ? minutes(minutes)
                : words.of("serving.time.hours", words.format().number(minutes / 60, 0));
    }

    private String minutes(double minutes) {
        return words.of("serving.time.minutes", words.format().number(minutes, 0));
    }
}
