package undercroft.outlook.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Interval;
import undercroft.series.Band;

/**
 * Pressure in the bottles, bar gauge.
 *
 * @param atPresent now
 * @param peakPast highest since capping
 * @param peakAhead highest in the weeks ahead, at the place's own coming temperatures
 * @param passesWorkingPressureAt when the 95 % pressure first passes the working pressure in those weeks
 * @param strongestBottle now, in the most strongly primed of the bottles that are left
 * @param memoryBar all pressure borne so far as one that acts for 60 seconds (static fatigue of glass)
 * @param workingPressureBar of the bottle as it is used
 * @param cautionBar from here on worth watching
 * @param heatLimitCelsius warmest storage at which the 95 % pressure of the finished beer stays within the limit; infinite
 *     when no storage temperature passes it, below zero when it is passed even cold
 * @param trajectory from capping to the horizon; low and high include the swing of the day
 */
public record PressureOutlook(
        Interval atPresent,
        Interval peakPast,
        Interval peakAhead,
        Optional<Instant> passesWorkingPressureAt,
        Interval strongestBottle,
        Interval memoryBar,
        double workingPressureBar,
        double cautionBar,
        double heatLimitCelsius,
        BottleType bottle,
        Band trajectory) {
    /** How far ahead a peak of pressure is looked for. */
    public static final Duration AHEAD = Duration.ofDays(60);

    /** Whether the glass may have borne all that its class stands in a 60-second test. */
    public boolean isWorn() {
        return bottle.isGlass() && memoryBar.high() > PressureLimits.of(bottle).minuteStrengthBar();
    }
}
