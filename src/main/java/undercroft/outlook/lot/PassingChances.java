package undercroft.outlook.lot;

import java.time.Instant;
import undercroft.calc.conditioning.PressureForecast;
import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.spell.ColdRest;
import undercroft.calc.spell.WarmestWeek;
import undercroft.series.Band;
import undercroft.series.Track;

/**
 * Works out how likely the strongest bottle passes its working pressure, and has passed it.
 *
 * @param strongest the CO2 its priming makes over the average bottle's
 * @param trajectory its course along {@code bottles}
 */
record PassingChances(
        PressureForecast forecast,
        double strongest,
        Band trajectory,
        Track bottles,
        LimitTemperatures limits,
        double workingPressureBar) {
    /** Equally likely values of a standard normal: the middles of eight parts of its weight. */
    private static final double[] DEVIATES = {-1.534, -0.887, -0.489, -0.157, 0.157, 0.489, 0.887, 1.534};

    /**
     * The chances, from the instants of the course between {@code present} and {@code aheadUntil}.
     *
     * @param here index of the present in {@code bottles}
     * @param until end of the weeks ahead, epoch second
     */
    PassingChance ahead(int present, int aheadUntil, int here, long until, WarmestWeek year) {
        WarmestWeek.Ahead week = WarmestWeek.ahead(bottles, bottles.timeAt(here), until);
        double yearCelsius = Math.max(year.celsius(), week.celsius());
        return new PassingChance(
                over(present, here),
                Math.max(inTheWeek(week), atThePeak(present, aheadUntil)),
                limits.probabilityOver(yearCelsius),
                week.celsius(),
                yearCelsius,
                year.source());
    }

    /** All that may ferment gone; over the temperatures the week may have. */
    private double inTheWeek(WarmestWeek.Ahead week) {
        double sum = 0;
        for (double deviate : DEVIATES) {
            sum += limits.probabilityOver(week.celsius() + deviate * week.spreadKelvin()) / DEVIATES.length;
        }
        return sum;
    }

    /** At the hour of the highest pressure to come, which a hot afternoon may make higher than its week. */
    private double atThePeak(int present, int aheadUntil) {
        return atTheWarmest(peak(present, aheadUntil));
    }

    /** The worst there was up to the present, with the bursts of the batch. */
    PressurePast past(int present, Evidence evidence) {
        int peak = peak(0, present + 1);
        long lastOver = trajectory.timeAt(peak);
        long warmOver = bottles.timeAt(0);
        for (int i = 0; i <= present; i++) {
            if (trajectory.highAt(i) > workingPressureBar) {
                lastOver = trajectory.timeAt(i);
                warmOver = bottles.valueAt(bottles.indexAt(lastOver)) > ColdRest.COLD_CELSIUS ? lastOver : warmOver;
            }
        }
        long burst = evidence.bursts().stream()
                .mapToLong(each -> each.at().getEpochSecond())
                .max()
                .orElse(Long.MIN_VALUE);
        return new PressurePast(
                LotCalculator.peak(trajectory, 0, present + 1),
                Instant.ofEpochSecond(trajectory.timeAt(peak)),
                atTheWarmest(peak),
                Instant.ofEpochSecond(lastOver),
                ColdRest.since(bottles, Math.max(burst, warmOver), trajectory.timeAt(present)));
    }

    private int peak(int fromInclusive, int untilExclusive) {
        int peak = fromInclusive;
        for (int i = fromInclusive; i < untilExclusive; i++) {
            peak = trajectory.highAt(i) > trajectory.highAt(peak) ? i : peak;
        }
        return peak;
    }

    /** At the warmest hour between the instant before and this one. */
    private double atTheWarmest(int instant) {
        int warmest = bottles.indexAt(trajectory.timeAt(instant));
        for (int i = bottles.indexAt(trajectory.timeAt(Math.max(0, instant - 1)));
                bottles.timeAt(i) < trajectory.timeAt(instant);
                i++) {
            warmest = bottles.valueAt(i) > bottles.valueAt(warmest) ? i : warmest;
        }
        return over(instant, warmest);
    }

    private double over(int instant, int hour) {
        return forecast.probabilityOver(
                instant, bottles.valueAt(hour), bottles.spreadAt(hour), strongest, workingPressureBar);
    }
}
