package undercroft.calc.chill;

import undercroft.catalogue.BottleType;
import undercroft.catalogue.CoolingMedium;
import undercroft.series.TimeSeries;

/** The temperature of the beer from the place it stands in, through the cold, to the table, at the usual pace. */
public final class ChillTrajectory {
    private static final int STEP_SECONDS = 300;
    private static final double SHARE_BEFORE = 0.08;
    private static final int LEAST_BEFORE_SECONDS = 1800;

    private ChillTrajectory() {}

    /**
     * The beer's temperature over a plan, °C every five minutes or so, with a little of what was before.
     *
     * @param putInEpochSecond when the bottles really go in, before the plan's serving
     * @param fromCelsius where they stand until then, −40 to 60 °C
     * @param coldCelsius the cold place, −40 to 60 °C
     * @return empty when the bottles would go in after the serving
     */
    public static TimeSeries of(
            ChillPlan plan,
            BottleType type,
            CoolingMedium coolingMedium,
            int count,
            long putInEpochSecond,
            double fromCelsius,
            double coldCelsius) {
        long serving = plan.servingEpochSecond();
        if (putInEpochSecond >= serving) {
            return TimeSeries.empty();
        }
        long takeOut = Math.max(putInEpochSecond, Math.min(serving, plan.takeOutEpochSecond()));
        long before = Math.max(LEAST_BEFORE_SECONDS, Math.round((serving - putInEpochSecond) * SHARE_BEFORE));
        Cooling cooling = Cooling.of(type, coolingMedium, coldCelsius, count);
        Cooling table =
                Cooling.of(BottleThermal.of(type), CoolingMedium.ROOM, ChillPlan.TABLE_CELSIUS, Arrangement.SINGLE);
        TimeSeries.Builder trajectory = new TimeSeries.Builder();
        trajectory.add(putInEpochSecond - before, fromCelsius);
        for (long at = putInEpochSecond; at < takeOut; at += STEP_SECONDS) {
            trajectory.add(at, cooling.usualCelsiusAfter(fromCelsius, (at - putInEpochSecond) / 60.0));
        }
        double cold = cooling.usualCelsiusAfter(fromCelsius, (takeOut - putInEpochSecond) / 60.0);
        for (long at = takeOut; at < serving; at += STEP_SECONDS / 5) {
            trajectory.add(at, table.usualCelsiusAfter(cold, (at - takeOut) / 60.0));
        }
        trajectory.add(serving, table.usualCelsiusAfter(cold, (serving - takeOut) / 60.0));
        return trajectory.build();
    }
}
