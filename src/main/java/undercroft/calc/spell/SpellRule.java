package undercroft.calc.spell;

import java.util.OptionalDouble;

/**
 * When a place's bottles are in a spell. Two thresholds, as weather services use for heat waves, on the bottles' lagged
 * temperature against a running median; the figures are this tool's own (assumed).
 *
 * @param startKelvin off the median to begin, above {@code endKelvin}
 * @param startHours so long without a break
 * @param endKelvin nearer than this to end
 * @param endHours so long without a break
 * @param medianDays what counts as used to, 1 or more; a move becomes the new normal in half of it
 * @param warmLimitCelsius above it for three hours is a spell anywhere
 * @param coldLimitCelsius below it for three hours is a spell anywhere
 */
public record SpellRule(
        double startKelvin,
        double startHours,
        double endKelvin,
        double endHours,
        int medianDays,
        OptionalDouble warmLimitCelsius,
        OptionalDouble coldLimitCelsius) {
    /** 3 K for a day, until nearer than 1.5 K for half a day; median of four weeks; no limits. */
    public static final SpellRule STANDARD =
            new SpellRule(3, 24, 1.5, 12, 28, OptionalDouble.empty(), OptionalDouble.empty());

    public SpellRule {
        if (!(startKelvin > endKelvin && endKelvin > 0 && startHours >= 0 && endHours >= 0 && medianDays >= 1)) {
            throw new IllegalArgumentException("a spell begins further out than it ends");
        }
    }

    /** The same rule with absolute limits, °C. */
    public SpellRule withLimits(double coldCelsius, double warmCelsius) {
        return new SpellRule(
                startKelvin,
                startHours,
                endKelvin,
                endHours,
                medianDays,
                OptionalDouble.of(warmCelsius),
                OptionalDouble.of(coldCelsius));
    }
}
