package undercroft.calc.chill;

import java.util.OptionalDouble;
import undercroft.catalogue.CoolingMedium;
import undercroft.quantity.Interval;

/**
 * A bottle in a freezer: when to fetch it and when it would burst. Ice takes up nearly a
 * tenth more room than its water and breaks the bottle.
 *
 * @param alarmMinutes when to fetch it: 45 min, or sooner if it may reach 0 °C sooner
 * @param minutesToZero until 0 °C at the earliest; empty where the freezer is not below that
 * @param minutesToFreezing until ice begins at the earliest; empty where it never does
 */
public record FreezerAlarm(double alarmMinutes, OptionalDouble minutesToZero, OptionalDouble minutesToFreezing) {
    /** No bottle stays in a freezer longer without somebody looking. Assumed; a 330 mL longneck needs 55 min to 0 °C. */
    public static final double LONGEST_MINUTES = 45;

    /** Where ice begins in beer of 5 % by volume, °C, from memory; stronger beer freezes lower. */
    public static final double USUAL_FREEZING_CELSIUS = -2.2;

    /**
     * The alarm for one bottle with air all round, the quickest to freeze, told from the fast end of the spread.
     *
     * @param fromCelsius when it goes in, −40 to 60 °C
     * @param freezerCelsius −40 to 60 °C
     * @param freezingCelsius where ice begins in this beer
     */
    public static FreezerAlarm of(
            BottleThermal bottle, double fromCelsius, double freezerCelsius, double freezingCelsius) {
        Cooling cooling = Cooling.of(bottle, CoolingMedium.FREEZER, freezerCelsius, Arrangement.SINGLE);
        boolean cools = fromCelsius > freezerCelsius;
        OptionalDouble toZero = cools ? earliest(cooling, fromCelsius, 0) : OptionalDouble.empty();
        OptionalDouble toFreezing = cools ? earliest(cooling, fromCelsius, freezingCelsius) : OptionalDouble.empty();
        return new FreezerAlarm(Math.min(LONGEST_MINUTES, toZero.orElse(LONGEST_MINUTES)), toZero, toFreezing);
    }

    private static OptionalDouble earliest(Cooling cooling, double fromCelsius, double toCelsius) {
        return cooling.minutesSpread(fromCelsius, toCelsius).stream()
                .mapToDouble(Interval::low)
                .findFirst();
    }
}
