package undercroft.outlook.lot;

import static undercroft.outlook.lot.CauseFigure.BOTTLES;
import static undercroft.outlook.lot.CauseFigure.CAUTION_GAUGE_BAR;
import static undercroft.outlook.lot.CauseFigure.CHANCE;
import static undercroft.outlook.lot.CauseFigure.COLDEST_CELSIUS;
import static undercroft.outlook.lot.CauseFigure.FRACTION_DONE;
import static undercroft.outlook.lot.CauseFigure.FREEZING_CELSIUS;
import static undercroft.outlook.lot.CauseFigure.HEAT_LIMIT_CELSIUS;
import static undercroft.outlook.lot.CauseFigure.LIGHT_DOSE;
import static undercroft.outlook.lot.CauseFigure.LIGHT_DOSE_PER_DAY;
import static undercroft.outlook.lot.CauseFigure.MEMORY_GAUGE_BAR;
import static undercroft.outlook.lot.CauseFigure.PEAK_AHEAD_GAUGE_BAR;
import static undercroft.outlook.lot.CauseFigure.PEAK_PAST_GAUGE_BAR;
import static undercroft.outlook.lot.CauseFigure.SHELF_DAYS_BUDGET;
import static undercroft.outlook.lot.CauseFigure.SHELF_DAYS_USED;
import static undercroft.outlook.lot.CauseFigure.STRONGEST_GAUGE_BAR;
import static undercroft.outlook.lot.CauseFigure.TEMPERATURE_CELSIUS;
import static undercroft.outlook.lot.CauseFigure.WARMEST_WEEK_CELSIUS;
import static undercroft.outlook.lot.CauseFigure.WORKING_PRESSURE_GAUGE_BAR;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.chill.Frost;
import undercroft.calc.conditioning.Stuck;
import undercroft.calc.spell.FrostExposure;

/** Grades a lot: from its facts to its verdict. All limits between clear, watch and act stand here. */
final class LotVerdict {
    /** Chance to pass the working pressure now or in the weeks ahead from which a lot is to be watched (assumption). */
    private static final double WATCHED = 0.02;

    /** The chance from which it is to be acted on (assumption). */
    private static final double ACTED_ON = 0.10;

    /** The same for the warmest week of the year, which leaves time to act (assumption). */
    private static final double WATCHED_FOR_SUMMER = 0.05;

    private static final double ACTED_ON_FOR_SUMMER = 0.25;

    /** So long what happened leads. */
    private static final Duration LATELY = Duration.ofDays(14);

    /** A peak is told beside the pressure of now from this difference on, bar. */
    private static final double WORSE_BAR = 0.2;

    private static final double NOTICED = 1;
    private static final double POSSIBLE = 0.25;
    private static final double SOON_DAYS = 3;
    /** So much light a day makes a taste possible within a month. */
    private static final double FALLING_PER_DAY = POSSIBLE / 30;

    private final LotOutlook lot;
    private final List<Cause> causes = new ArrayList<>();

    private LotVerdict(LotOutlook lot) {
        this.lot = lot;
    }

    /** Nothing is to be said of a lot without bottles. */
    static Verdict of(LotOutlook lot) {
        if (lot.left() == 0) {
            return new Verdict(List.of());
        }
        LotVerdict verdict = new LotVerdict(lot);
        verdict.bursts();
        verdict.frost();
        verdict.readings();
        verdict.pressure();
        verdict.past();
        verdict.light();
        verdict.yeast();
        verdict.age();
        return new Verdict(verdict.causes);
    }

    /** A burst bottle says more than any figure, until the user has said why and a later reading bears it out. */
    private void bursts() {
        for (Evidence.Burst burst : lot.evidence().bursts()) {
            boolean settled = burst.cause().isPresent();
            if (!settled || !lot.evidence().isBorneOut(burst)) {
                causes.add(new Cause(
                        settled ? Cause.Kind.BURST_SETTLED : Cause.Kind.BURST,
                        settled ? Alert.WATCH : Alert.ACT,
                        Optional.of(burst.lotId()),
                        Optional.of(burst.at()),
                        Map.of(BOTTLES, (double) burst.bottles())));
            }
        }
    }

    /** Act where ice may have burst bottles, now or lately; watch where ice forms, and what may have burst long ago. */
    private void frost() {
        FrostExposure frost = lot.frost().exposure();
        Map<CauseFigure, Double> figures = Map.of(
                TEMPERATURE_CELSIUS,
                lot.temperature().nowCelsius(),
                COLDEST_CELSIUS,
                frost.coldestCelsius(),
                FREEZING_CELSIUS,
                lot.frost().limits().freezingCelsius());
        Optional<Instant> first = frost.firstBelow().isPresent()
                ? Optional.of(Instant.ofEpochSecond(frost.firstBelow().getAsLong()))
                : Optional.empty();
        boolean mayHaveBurst = frost.worst() == Frost.State.MAY_HAVE_BURST;
        if (frost.now() != Frost.State.NONE) {
            graded(Cause.Kind.FROZEN, mayHaveBurst ? Alert.ACT : Alert.WATCH, first, figures);
        } else if (mayHaveBurst) {
            Instant last = Instant.ofEpochSecond(frost.lastBelow().orElseThrow());
            graded(Cause.Kind.WAS_FROZEN, isLately(last) ? Alert.ACT : Alert.WATCH, first, figures);
        }
    }

    /**
     * A peak that was worse than it is now leads for a fortnight, graded by the chance that it passed the working pressure;
     * from then on it stands below.
     */
    private void past() {
        PressurePast past = lot.pressure().past();
        if (past.peak().high() < lot.pressure().strongestBottle().high() + WORSE_BAR) {
            return;
        }
        Map<CauseFigure, Double> figures = Map.of(
                PEAK_PAST_GAUGE_BAR,
                past.peak().high(),
                CHANCE,
                past.chance(),
                WORKING_PRESSURE_GAUGE_BAR,
                lot.pressure().workingPressureBar());
        if (isLately(past.lastOver())) {
            graded(
                    Cause.Kind.PEAK_PAST_OVER_WORKING_PRESSURE,
                    soon(past.chance()),
                    Optional.of(past.peakAt()),
                    figures);
        } else if (past.peak().high() > lot.pressure().workingPressureBar()) {
            graded(Cause.Kind.OLD_PEAK_OVER_WORKING_PRESSURE, Alert.WATCH, Optional.of(past.peakAt()), figures);
        }
    }

    private boolean isLately(Instant when) {
        return when.isAfter(lot.at().minus(LATELY));
    }

    /** Act on gas that the sugar cannot explain; watch readings that do not fit. */
    private void readings() {
        switch (lot.evidence().readings()) {
            case NEEDS_EXTRA_EXTRACT -> ofBatch(Cause.Kind.READINGS_ABOVE_SUGAR, Alert.ACT);
            case DISAGREES -> ofBatch(Cause.Kind.READINGS_DISAGREE, Alert.WATCH);
            case AGREES, NO_READINGS -> {}
        }
    }

    /**
     * Graded by the chance that the strongest bottle passes its working pressure: now, in the weeks ahead, in the warmest
     * week of the year. The grade follows the chance through watch to act, whatever the figures do. Act too when the glass
     * has borne what its class stands for a minute; watch from the caution pressure on.
     */
    private void pressure() {
        PressureOutlook pressure = lot.pressure();
        PassingChance chance = pressure.chance();
        double working = pressure.workingPressureBar();
        graded(
                Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE,
                soon(chance.now()),
                Optional.empty(),
                Map.of(
                        STRONGEST_GAUGE_BAR,
                        pressure.strongestBottle().high(),
                        CHANCE,
                        chance.now(),
                        WORKING_PRESSURE_GAUGE_BAR,
                        working));
        graded(
                Cause.Kind.PEAK_AHEAD_OVER_WORKING_PRESSURE,
                soon(chance.ahead()),
                pressure.passesWorkingPressureAt(),
                Map.of(
                        PEAK_AHEAD_GAUGE_BAR,
                        pressure.peakAhead().high(),
                        CHANCE,
                        chance.ahead(),
                        WORKING_PRESSURE_GAUGE_BAR,
                        working));
        graded(
                Cause.Kind.OVER_IN_WARMEST_WEEK,
                inSummer(chance.warmestYear()),
                Optional.empty(),
                Map.of(
                        WARMEST_WEEK_CELSIUS,
                        chance.yearCelsius(),
                        CHANCE,
                        chance.warmestYear(),
                        HEAT_LIMIT_CELSIUS,
                        pressure.heatLimitCelsius(),
                        WORKING_PRESSURE_GAUGE_BAR,
                        working));
        if (pressure.isWorn()) {
            add(
                    Cause.Kind.GLASS_WORN,
                    Alert.ACT,
                    Map.of(
                            PEAK_PAST_GAUGE_BAR,
                            pressure.peakPast().high(),
                            MEMORY_GAUGE_BAR,
                            pressure.memoryBar().high(),
                            WORKING_PRESSURE_GAUGE_BAR,
                            working));
        }
        if (pressure.strongestBottle().median() > pressure.cautionBar()) {
            add(
                    Cause.Kind.STRONGEST_OVER_CAUTION,
                    Alert.WATCH,
                    Map.of(
                            STRONGEST_GAUGE_BAR,
                            pressure.strongestBottle().high(),
                            CAUTION_GAUGE_BAR,
                            pressure.cautionBar()));
        }
    }

    private static Alert soon(double chance) {
        return chance >= ACTED_ON ? Alert.ACT : chance >= WATCHED ? Alert.WATCH : Alert.CLEAR;
    }

    private static Alert inSummer(double chance) {
        return chance >= ACTED_ON_FOR_SUMMER ? Alert.ACT : chance >= WATCHED_FOR_SUMMER ? Alert.WATCH : Alert.CLEAR;
    }

    private void graded(Cause.Kind kind, Alert alert, Optional<Instant> since, Map<CauseFigure, Double> figures) {
        if (alert != Alert.CLEAR) {
            causes.add(new Cause(kind, alert, Optional.of(lot.id()), since, figures));
        }
    }

    /** Act while there is still something to save and a taste of light is days away; watch once it may be there. */
    private void light() {
        double dose = lot.light().dose().median();
        double perDay = lot.light().perDay();
        Map<CauseFigure, Double> figures = Map.of(LIGHT_DOSE, dose, LIGHT_DOSE_PER_DAY, perDay);
        if (dose < NOTICED && perDay > 0 && (NOTICED - dose) / perDay <= SOON_DAYS) {
            add(Cause.Kind.LIGHTSTRUCK_SOON, Alert.ACT, figures);
        }
        if (dose >= POSSIBLE) {
            add(Cause.Kind.LIGHT_MAY_BE_TASTED, Alert.WATCH, figures);
        }
        if (perDay > FALLING_PER_DAY) {
            add(Cause.Kind.LIGHT_FALLS, Alert.WATCH, figures);
        }
    }

    /** Watch yeast that does not get on. */
    private void yeast() {
        Map<CauseFigure, Double> figures = Map.of(
                FRACTION_DONE,
                lot.carbonation().fractionDone().median(),
                TEMPERATURE_CELSIUS,
                lot.temperature().nowCelsius());
        for (Stuck reason : lot.stuck().reasons()) {
            graded(stuck(reason), Alert.WATCH, lot.stuck().stillSince(), figures);
        }
        switch (lot.progress()) {
            case STALLED -> add(Cause.Kind.STALLED, Alert.WATCH, figures);
            case TOO_HOT -> add(Cause.Kind.TOO_HOT_FOR_YEAST, Alert.WATCH, figures);
            case SLOW -> add(Cause.Kind.SLOW, Alert.WATCH, figures);
            case WORKING, DONE -> {}
        }
    }

    private static Cause.Kind stuck(Stuck reason) {
        return switch (reason) {
            case BEYOND_ALCOHOL_LIMIT -> Cause.Kind.BEYOND_ALCOHOL_LIMIT;
            case NO_SUGAR -> Cause.Kind.NO_SUGAR;
            case STANDS_STILL -> Cause.Kind.READINGS_STAND_STILL;
        };
    }

    private void age() {
        if (lot.stage() == Stage.PAST_BEST_BEFORE) {
            add(
                    Cause.Kind.PAST_BEST_BEFORE,
                    Alert.WATCH,
                    Map.of(
                            SHELF_DAYS_USED,
                            lot.ageing().daysUsed().median(),
                            SHELF_DAYS_BUDGET,
                            lot.ageing().budgetDays().median()));
        }
    }

    private void ofBatch(Cause.Kind kind, Alert alert) {
        causes.add(new Cause(kind, alert, Optional.empty(), Optional.empty(), Map.of()));
    }

    private void add(Cause.Kind kind, Alert alert, Map<CauseFigure, Double> figures) {
        causes.add(Cause.of(kind, alert, lot.lot().id(), figures));
    }
}
