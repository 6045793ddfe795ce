package undercroft.calc.conditioning;

import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.PressureMemory;
import undercroft.calc.gas.PressureTable;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Track;

/** The pressure in a lot's bottles along a temperature track. All pressures in bar gauge. Not for two threads at once. */
public interface PressureForecast {
    /** For the members of {@code run}, which {@code ensemble} made. */
    static PressureForecast of(ConditioningEnsemble ensemble, ConditioningRun run, PressureTable table) {
        return new EnsemblePressure(ensemble, run, table);
    }

    /**
     * The worse of two forecasts, whatever is asked: a pressure's range holds both, about the higher median; every chance is the
     * larger one, every limit the lower.
     *
     * @param other of a run with the same instants
     */
    default PressureForecast orWorse(PressureForecast other) {
        return new WorsePressure(this, other);
    }

    /**
     * Pressure at one of the run's instants.
     *
     * @param celsius temperature of the bottles
     * @param spreadKelvin its standard deviation, 0 or more
     */
    Interval at(int instant, double celsius, double spreadKelvin);

    /**
     * Pressure of the most strongly primed of several bottles at one of the run's instants.
     *
     * @param factor the CO2 of its priming over the average bottle's, 1 or more
     */
    Interval strongestAt(int instant, double celsius, double spreadKelvin, double factor);

    /** Pressure when everything fermentable is gone, at a temperature known without spread. */
    Interval finished(double celsius);

    /**
     * Where the strongest of several bottles, finished, passes its working pressure.
     *
     * @param factor the CO2 its priming makes over the average bottle's, 1 or more
     */
    LimitTemperatures limitTemperatures(double factor, PressureLimits limits);

    /** The probability, 0 to 1, that the strongest of several bottles is over a pressure at an instant; as {@link #strongestAt}. */
    double probabilityOver(int instant, double celsius, double spreadKelvin, double factor, double bar);

    /**
     * The course over the run's instants: median and quartiles at the mean temperature of the time since the instant
     * before; low and high also reach to its coldest and warmest, along the median's slope, so that no peak falls between
     * two instants. Once the sugar is gone the spread depends on temperature and on the hidden extract alone and is read from
     * tables.
     *
     * @param factor 1 for the average bottle, or what the strongest one's priming makes over the average, 1 or more
     */
    Band trajectory(Track bottle, double factor);

    /**
     * How long the 95 % pressure stands above a limit, s, told from every step of the track: between two of the run's
     * instants it is taken to follow the temperature on a straight line from the coldest to the warmest of that time.
     *
     * @param trajectory what {@link #trajectory} gave for the same track and factor
     * @param fromInclusive epoch second; {@code untilExclusive} after it
     * @param workingPressureBar above 0
     * @return 0 to the whole stretch
     */
    double secondsOver(
            Track bottle,
            Band trajectory,
            double factor,
            long fromInclusive,
            long untilExclusive,
            double workingPressureBar);

    /**
     * All pressure borne up to a run's instant as one held for 60 s ({@link PressureMemory}), for the 5, 50 and 95 %
     * courses.
     */
    static Interval memory(Band trajectory, int untilIndexExclusive) {
        double low = 0;
        double median = 0;
        double high = 0;
        for (int i = 1; i < untilIndexExclusive; i++) {
            double seconds = (double) trajectory.timeAt(i) - trajectory.timeAt(i - 1);
            low = PressureMemory.after(low, trajectory.lowAt(i), seconds);
            median = PressureMemory.after(median, trajectory.medianAt(i), seconds);
            high = PressureMemory.after(high, trajectory.highAt(i), seconds);
        }
        return Interval.of(low, median, high);
    }
}
