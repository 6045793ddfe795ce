package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.HeatLimit;
import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.PressureTable;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Track;

/** The quick ways of the forecast against the same question asked of every member. */
final class PressureForecastTest {
    private static final int DAYS = 120;
    private static final ConditioningEnsemble ENSEMBLE = ConditioningEnsemble.of(Beers.ale(), 1024);
    private static final PressureTable TABLE = PressureTable.of(ClosedBottle.of(344, 330, 5, 20, 1.01325), 8, 0.95);

    @Test
    void onceSettledTheTrajectoryIsThatOfAllMembersAtThatTemperature() {
        Track track = track(0);
        ConditioningRun run = ENSEMBLE.run(track, 0, days());
        assertTrue(run.settledInstant() > 10 && run.settledInstant() < DAYS, "" + run.settledInstant());
        PressureForecast forecast = PressureForecast.of(ENSEMBLE, run, TABLE);
        Band trajectory = forecast.trajectory(track, 1);
        for (int i = run.settledInstant(); i < DAYS; i += 7) {
            Interval asked = forecast.at(i, 20, 0);
            assertEquals(asked.low(), trajectory.lowAt(i), 0.02);
            assertEquals(asked.median(), trajectory.medianAt(i), 0.02);
            assertEquals(asked.high(), trajectory.highAt(i), 0.02);
        }
    }

    @Test
    void anUncertainTemperatureWidensTheSettledTrajectoryAsItDoesEveryMembers() {
        Track track = track(2.5);
        ConditioningRun run = ENSEMBLE.run(track, 0, days());
        PressureForecast forecast = PressureForecast.of(ENSEMBLE, run, TABLE);
        Band trajectory = forecast.trajectory(track, 1);
        int last = DAYS - 1;
        assertTrue(run.settledInstant() < last);
        Interval asked = forecast.at(last, 20, 2.5);
        assertEquals(asked.low(), trajectory.lowAt(last), 0.06);
        assertEquals(asked.median(), trajectory.medianAt(last), 0.04);
        assertEquals(asked.high(), trajectory.highAt(last), 0.06);
        assertTrue(trajectory.highAt(last) - trajectory.lowAt(last)
                > forecast.at(last, 20, 0).width() + 0.05);
    }

    @Test
    void theHeatLimitIsWhereTheHighFinishedPressureMeetsIt() {
        ConditioningRun run = ENSEMBLE.run(track(0), 0, days());
        PressureForecast forecast = PressureForecast.of(ENSEMBLE, run, TABLE);
        LimitTemperatures limits = forecast.limitTemperatures(1, new PressureLimits(3, 3.5, 8));
        HeatLimit limit = limits.heatLimit();
        assertEquals(0.05, limits.probabilityOver(limit.celsius() + 1e-9), 0.005);
        assertEquals(HeatLimit.Reach.PRESSURE, limit.reach());
        assertEquals(3.5, forecast.finished(limit.celsius()).high(), 0.01);
    }

    @Test
    void theStrongestBottleHoldsMoreByItsFactorOnWhatWasMade() {
        ConditioningRun run = ENSEMBLE.run(track(0), 0, days());
        PressureForecast forecast = PressureForecast.of(ENSEMBLE, run, TABLE);
        double average = forecast.at(DAYS - 1, 20, 0).median();
        assertTrue(forecast.strongestAt(DAYS - 1, 20, 0, 1.1).median() > average + 0.1);
        assertEquals(average, forecast.strongestAt(DAYS - 1, 20, 0, 1).median());
    }

    @Test
    void allPressureBorneIsMoreThanTheHighestHeldForAMinute() {
        ConditioningRun run = ENSEMBLE.run(track(0), 0, days());
        Band trajectory = PressureForecast.of(ENSEMBLE, run, TABLE).trajectory(track(0), 1);
        Interval memory = PressureForecast.memory(trajectory, DAYS);
        // A load held for t is worth (t / 60 s)^(1/16) of itself held for a minute; about 2.1 for a hundred days.
        assertEquals(trajectory.medianAt(DAYS - 1) * Math.pow(100 * 86_400 / 60.0, 1.0 / 16), memory.median(), 0.15);
    }

    private static Track track(double spread) {
        double[] celsius = new double[DAYS * 24 + 1];
        double[] spreads = new double[celsius.length];
        Arrays.fill(celsius, 20);
        Arrays.fill(spreads, spread);
        return Track.of(0, 3600, celsius, spreads);
    }

    private static long[] days() {
        long[] days = new long[DAYS];
        for (int i = 0; i < DAYS; i++) {
            days[i] = i * 86_400L;
        }
        return days;
    }
}
