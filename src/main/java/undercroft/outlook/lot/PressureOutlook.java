package undercroft.outlook.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Interval;
import undercroft.series.Band;

/**
 * Pressure in the bottles, bar gauge. Limits, peaks and loads are those of the strongest bottle left: the most strongly primed
 * of a typical lot of as many.
 *
 * @param atPresent now, in the average bottle
 * @param past the worst the strongest bottle has had since capping
 * @param peakAhead highest in the weeks ahead, in the strongest bottle at the place's own coming temperatures
 * @param passesWorkingPressureAt when the strongest bottle's 95 % pressure first passes the working pressure in those weeks
 * @param strongestBottle now, in the most strongly primed of the bottles that are left
 * @param memoryBar all pressure the strongest has borne so far as one that acts for 60 seconds (static fatigue of glass)
 * @param workingPressureBar of the bottle as it is used
 * @param cautionBar from here on worth watching
 * @param chance how likely the strongest bottle left passes its working pressure
 * @param limitTemperatures where the strongest bottle left, finished, passes its working pressure, over all that is not
 *     known
 * @param trajectory the average bottle from capping to the horizon; low and high include the swing of the day
 * @param strongestTrajectory the same of the strongest bottle
 */
public record PressureOutlook(
        Interval atPresent,
        PressurePast past,
        Interval peakAhead,
        Optional<Instant> passesWorkingPressureAt,
        Interval strongestBottle,
        Interval memoryBar,
        double workingPressureBar,
        double cautionBar,
        PassingChance chance,
        LimitTemperatures limitTemperatures,
        BottleType bottle,
        Band trajectory,
        Band strongestTrajectory) {
    /** How far ahead a peak of pressure is looked for. */
    public static final Duration AHEAD = Duration.ofDays(60);

    /**
     * The warmest storage at which the 95 % pressure of the strongest bottle left, finished, stays within its limit; infinite
     * when no storage temperature passes it, below zero when it is passed even cold.
     */
    public double heatLimitCelsius() {
        return limitTemperatures.heatLimit().orInfinite();
    }

    /**
     * The probability, 0 to 1, that the strongest bottle left is over its working pressure at a storage temperature once
     * everything has fermented.
     */
    public double probabilityOverAt(double celsius) {
        return limitTemperatures.probabilityOver(celsius);
    }

    /** The highest since capping, in the strongest bottle. */
    public Interval peakPast() {
        return past.peak();
    }

    /** Whether the glass may have borne all that its class stands in a 60-second test. */
    public boolean isWorn() {
        return bottle.isGlass() && memoryBar.high() > PressureLimits.of(bottle).minuteStrengthBar();
    }
}
