package undercroft.outlook.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Interval;
import undercroft.series.Band;

/**
 * Pressure in the bottles, bar gauge. What the average bottle holds is what a gauge or an opened bottle can be compared
 * with; every limit, peak and grade is about the strongest: the most strongly primed of the bottles that are left.
 *
 * @param atPresent now, in the average bottle
 * @param peakPast highest since capping, strongest bottle
 * @param peakAhead highest in the weeks ahead, at the place's own coming temperatures, strongest bottle
 * @param passesWorkingPressureAt when the 95 % pressure of the strongest first passes the working pressure in those weeks
 * @param strongestBottle now, in the strongest bottle
 * @param chance how likely the strongest passes its working pressure
 * @param memoryBar all pressure the strongest has borne so far as one that acts for 60 seconds (static fatigue of glass)
 * @param workingPressureBar of the bottle as it is used
 * @param cautionBar from here on worth watching
 * @param heatLimitCelsius warmest storage at which the 95 % pressure of the strongest bottle, finished, stays within the
 *     limit; infinite when no storage temperature passes it, below zero when it is passed even cold
 * @param trajectory of the average bottle, from capping to the horizon; low and high include the swing of the day
 * @param strongestTrajectory the same of the strongest bottle
 */
public record PressureOutlook(
        Interval atPresent,
        Interval peakPast,
        Interval peakAhead,
        Optional<Instant> passesWorkingPressureAt,
        Interval strongestBottle,
        PassingChance chance,
        Interval memoryBar,
        double workingPressureBar,
        double cautionBar,
        double heatLimitCelsius,
        BottleType bottle,
        Band trajectory,
        Band strongestTrajectory) {
    /** How far ahead a peak of pressure is looked for. */
    public static final Duration AHEAD = Duration.ofDays(60);

    /** Whether the glass may have borne all that its class stands in a 60-second test. */
    public boolean isWorn() {
        return bottle.isGlass() && memoryBar.high() > PressureLimits.of(bottle).minuteStrengthBar();
    }
}
