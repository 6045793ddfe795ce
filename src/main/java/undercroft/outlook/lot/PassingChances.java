package undercroft.outlook.lot;

import undercroft.calc.conditioning.PressureForecast;
import undercroft.calc.spell.WarmestWeek;
import undercroft.series.Band;
import undercroft.series.Track;

/**
 * Works out how likely the strongest bottle passes its working pressure.
 *
 * @param trajectory its course along {@code bottles}
 * @param here index of the present in {@code bottles}
 */
record PassingChances(PressureForecast strongest, Band trajectory, Track bottles, double workingPressureBar, int here) {
    /**
     * The chances, from the instants of the course between {@code present} and {@code aheadUntil}.
     *
     * @param until end of the weeks ahead, epoch second
     */
    PassingChance of(int present, int aheadUntil, long until, WarmestWeek year) {
        double now = strongest.chanceOver(present, bottles.valueAt(here), bottles.spreadAt(here), workingPressureBar);
        WarmestWeek.Ahead week = WarmestWeek.ahead(bottles, bottles.timeAt(here), until);
        double inTheWeek = strongest.chanceFinishedOver(week.celsius(), week.spreadKelvin(), workingPressureBar);
        double yearCelsius = Math.max(year.celsius(), week.celsius());
        return new PassingChance(
                now,
                Math.max(inTheWeek, atThePeak(present, aheadUntil)),
                strongest.chanceFinishedOver(yearCelsius, 0, workingPressureBar),
                week.celsius(),
                yearCelsius,
                year.source());
    }

    /** At the hour of the highest pressure to come, which a hot afternoon may make higher than its week. */
    private double atThePeak(int present, int aheadUntil) {
        int peak = present;
        for (int i = present; i < aheadUntil; i++) {
            peak = trajectory.highAt(i) > trajectory.highAt(peak) ? i : peak;
        }
        int first = bottles.indexAt(trajectory.timeAt(Math.max(0, peak - 1)));
        int last = bottles.indexAt(trajectory.timeAt(peak));
        int warmest = last;
        for (int i = first; i <= last; i++) {
            warmest = bottles.valueAt(i) > bottles.valueAt(warmest) ? i : warmest;
        }
        return strongest.chanceOver(peak, bottles.valueAt(warmest), bottles.spreadAt(warmest), workingPressureBar);
    }
}
