package undercroft.calc.chill;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Flocculation;
import undercroft.quantity.Interval;

/**
 * When bottles must go into the cold and come out of it for a glass of the wanted temperature. Counted back from the
 * serving: warming at the table, clearing, and cooling as slow as it may be. The clearing clock starts within 1 K of the
 * fridge, since the beer stirs itself until then (assumed). Whether the put-in time has passed, and what then, is for the caller to say.
 *
 * @param servingEpochSecond when it is poured
 * @param putInEpochSecond the latest moment to put the bottles in
 * @param coldEpochSecond when they are cold and clearing starts
 * @param takeOutEpochSecond when they come out; the serving itself unless the glass wants it warmer than the fridge
 * @param coolingMinutes allowed for from the room to cold: the slow end, or for a freezer its alarm if that is sooner
 * @param coolingSpreadMinutes how long it may take, 5, 50, 95 %
 * @param clearingHours upright in the cold; 0 in ice water or a freezer, where nothing stays
 * @param warmingMinutes at the table before pouring
 * @param bottleCelsius the bottle when it is poured from
 * @param coldEnough false where the place is too warm for the wanted glass, and the plan gives the coldest there is
 * @param freezerRisk true where a freezer would likely have to hold the bottles longer than its alarm allows
 */
public record ChillPlan(
        long servingEpochSecond,
        long putInEpochSecond,
        long coldEpochSecond,
        long takeOutEpochSecond,
        double coolingMinutes,
        Interval coolingSpreadMinutes,
        double clearingHours,
        double warmingMinutes,
        double bottleCelsius,
        boolean coldEnough,
        boolean freezerRisk,
        Arrangement arrangement) {
    /** The glass and the pouring warm the beer by 1 to 2 K: common practice, no source. */
    public static final double GLASS_WARMS_KELVIN = 1.5;

    private static final double COLD_KELVIN = 1;
    /** What the table is taken for, °C (assumed). */
    public static final double TABLE_CELSIUS = 21;

    /**
     * The plan for a serving, at a table of 21 °C.
     *
     * @param count bottles that go in together, 1 or more
     * @param fromCelsius where they stand now, −40 to 60 °C
     * @param fridgeCelsius the cold place as it really is, −40 to 60 °C
     * @param wantedCelsius in the glass, −5 to 40 °C
     * @param coolingMedium what kind of cold place; in one that is not good for resting the bottles stay only to get cold
     */
    public static ChillPlan backwards(
            long servingEpochSecond,
            BottleType type,
            int count,
            double fromCelsius,
            double fridgeCelsius,
            double wantedCelsius,
            Flocculation flocculation,
            CoolingMedium coolingMedium) {
        if (!(wantedCelsius >= -5 && wantedCelsius <= 40)) {
            throw new IllegalArgumentException("no beer is served at " + wantedCelsius);
        }
        Cooling cooling = Cooling.of(type, coolingMedium, fridgeCelsius, count);
        return coolingMedium.isGoodForResting()
                ? rested(servingEpochSecond, type, fromCelsius, wantedCelsius, flocculation, cooling)
                : quick(servingEpochSecond, type, fromCelsius, wantedCelsius, coolingMedium, cooling);
    }

    private static ChillPlan rested(
            long serving,
            BottleType type,
            double fromCelsius,
            double wanted,
            Flocculation flocculation,
            Cooling cooling) {
        double fridge = cooling.coolingMediumCelsius();
        double cold = fridge + COLD_KELVIN;
        Interval minutes =
                fromCelsius > cold ? cooling.minutesSpread(fromCelsius, cold).orElseThrow() : Interval.exactly(0);
        double coolingMinutes = minutes.high();
        double clearingHours = Clearing.hours(flocculation).median();
        double bottle = Math.max(fridge, wanted - GLASS_WARMS_KELVIN);
        double warmingMinutes = warming(type, fridge, bottle);
        long takeOut = serving - Math.round(warmingMinutes * 60);
        long coldFrom = takeOut - Math.round(clearingHours * 3600);
        long putIn = coldFrom - Math.round(coolingMinutes * 60);
        return new ChillPlan(
                serving,
                putIn,
                coldFrom,
                takeOut,
                coolingMinutes,
                minutes,
                clearingHours,
                warmingMinutes,
                bottle,
                wanted >= fridge,
                false,
                cooling.arrangement());
    }

    private static ChillPlan quick(
            long serving,
            BottleType type,
            double fromCelsius,
            double wanted,
            CoolingMedium coolingMedium,
            Cooling cooling) {
        double place = cooling.coolingMediumCelsius();
        double bottle = Math.min(fromCelsius, Math.max(place + COLD_KELVIN, wanted - GLASS_WARMS_KELVIN));
        Interval spread =
                fromCelsius > place ? cooling.minutesSpread(fromCelsius, bottle).orElseThrow() : Interval.exactly(0);
        double minutes = spread.high();
        boolean risk = false;
        if (coolingMedium == CoolingMedium.FREEZER) {
            FreezerAlarm alarm =
                    FreezerAlarm.of(BottleThermal.of(type), fromCelsius, place, FreezerAlarm.USUAL_FREEZING_CELSIUS);
            risk = spread.median() > alarm.alarmMinutes();
            minutes = Math.min(minutes, alarm.alarmMinutes());
        }
        long putIn = serving - Math.round(minutes * 60);
        return new ChillPlan(
                serving,
                putIn,
                serving,
                serving,
                minutes,
                spread,
                0,
                0,
                bottle,
                wanted >= bottle,
                risk,
                cooling.arrangement());
    }

    private static double warming(BottleType type, double fromCelsius, double toCelsius) {
        if (toCelsius <= fromCelsius) {
            return 0;
        }
        // A glass wanted warmer than the table never gets there; half a day out is as good as it gets.
        return Cooling.of(BottleThermal.of(type), CoolingMedium.ROOM, TABLE_CELSIUS, Arrangement.SINGLE)
                .minutesSpread(fromCelsius, toCelsius)
                .map(Interval::median)
                .orElse(12 * 60.0);
    }

    /**
     * The latest moment not after {@link #putInEpochSecond} at which people are up: between 07:00 and 22:00 as it stands,
     * in the night the evening before at 21:00.
     */
    public Instant putInWhileAwake(ZoneId zone) {
        ZonedDateTime latest = Instant.ofEpochSecond(putInEpochSecond).atZone(zone);
        LocalTime clock = latest.toLocalTime();
        if (!clock.isBefore(LocalTime.of(7, 0)) && clock.isBefore(LocalTime.of(22, 0))) {
            return latest.toInstant();
        }
        ZonedDateTime day = clock.isBefore(LocalTime.of(7, 0)) ? latest.minusDays(1) : latest;
        return day.with(LocalTime.of(21, 0)).toInstant();
    }
}
