package undercroft.calc.ageing;

import undercroft.series.Track;

/**
 * The Arrhenius law summed over a temperature track. Within a grid step of the track the beer has the mean of its two
 * ends; outside the grid nothing is summed.
 */
final class Arrhenius {
    /** kJ/(mol K), as the pharmacopoeia writes it, so that 83.144 kJ/mol is 10,000 K. */
    static final double GAS_CONSTANT = 8.3144e-3;

    static final double ZERO_CELSIUS = 273.15;
    static final double SECONDS_PER_DAY = 86400;

    private Arrhenius() {}

    /** Rate at a temperature against that at another, dimensionless; the energy in kelvin (Ea/R). */
    static double factor(double energyKelvin, double referenceCelsius, double celsius) {
        return Math.exp(energyKelvin * (1 / (referenceCelsius + ZERO_CELSIUS) - 1 / (celsius + ZERO_CELSIUS)));
    }

    /** ∫ factor dt in days over the part of [from, until) that the track covers. */
    static double days(Track track, long from, long until, double energyKelvin, double referenceCelsius) {
        long start = Math.max(from, track.timeAt(0));
        long end = Math.min(until, track.timeAt(track.size() - 1));
        double sum = 0;
        for (int i = start < end ? track.indexAt(start) : track.size(); i + 1 < track.size(); i++) {
            long stepFrom = Math.max(start, track.timeAt(i));
            long stepUntil = Math.min(end, track.timeAt(i + 1));
            if (stepFrom >= end) {
                break;
            }
            double celsius = (track.valueAt(i) + track.valueAt(i + 1)) / 2;
            sum += (stepUntil - stepFrom) * factor(energyKelvin, referenceCelsius, celsius);
        }
        return sum / SECONDS_PER_DAY;
    }
}
