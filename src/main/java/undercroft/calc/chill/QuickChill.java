package undercroft.calc.chill;

import undercroft.catalogue.BottleType;
import undercroft.catalogue.CoolingMedium;
import undercroft.quantity.Interval;

/**
 * The fastest way that cannot freeze a bottle: a bucket of ice and water, stirred now and then.
 *
 * @param minutes allowed for in the bucket: the slow end, for nobody stirs
 * @param spreadMinutes how long it may take, 5, 50, 95 %
 * @param putInEpochSecond the latest moment to put the bottles in
 * @param bottleCelsius the bottle when it is poured from
 * @param freezerMinutes after which bottles in a freezer must be fetched, for those who use one all the same
 */
public record QuickChill(
        double minutes, Interval spreadMinutes, long putInEpochSecond, double bottleCelsius, double freezerMinutes) {
    private static final double USUAL_FREEZER_CELSIUS = CoolingMedium.FREEZER.usualCelsius();

    /**
     * Ice water for a serving; arguments as in {@link ChillPlan#backwards}.
     *
     * @param count bottles that go in together, 1 or more
     */
    public static QuickChill of(
            long servingEpochSecond, BottleType type, int count, double fromCelsius, double wantedCelsius) {
        double bottle = Math.min(fromCelsius, Math.max(1, wantedCelsius - ChillPlan.GLASS_WARMS_KELVIN));
        double ice = CoolingMedium.ICE_WATER.usualCelsius();
        Interval spread = fromCelsius > bottle
                ? Cooling.of(type, CoolingMedium.ICE_WATER, ice, count)
                        .minutesSpread(fromCelsius, bottle)
                        .orElseThrow()
                : Interval.exactly(0);
        double minutes = spread.high();
        FreezerAlarm alarm = FreezerAlarm.of(
                BottleThermal.of(type), fromCelsius, USUAL_FREEZER_CELSIUS, FreezerAlarm.USUAL_FREEZING_CELSIUS);
        return new QuickChill(
                minutes, spread, servingEpochSecond - Math.round(minutes * 60), bottle, alarm.alarmMinutes());
    }
}
