package undercroft.calc.spell;

import undercroft.calc.conditioning.CardinalTemperatures;
import undercroft.catalogue.YeastStrain;

/**
 * How warm and how cold it may be for bottles with a yeast, whatever the place is used to. Warm limits are this tool's own
 * (assumed): beer of a lager yeast is kept cooler than that of ale, a farmhouse yeast is at home in warmth.
 *
 * @param warmCelsius above it for hours is a warm spell anywhere
 * @param stallCelsius below it the yeast works at less than a tenth of its best and bottles all but stand still
 */
public record YeastLimits(double warmCelsius, double stallCelsius) {
    private static final double STALL_SHARE = 0.10;

    /** The limits of a yeast, °C; the stall follows from its cardinal temperatures ({@link CardinalTemperatures}). */
    public static YeastLimits of(YeastStrain strain) {
        double warm = switch (strain) {
            case LAGER -> 28;
            case ALE, SPARKLING_WINE -> 30;
            case WARM_FARMHOUSE -> 34;
        };
        CardinalTemperatures cardinal =
                new CardinalTemperatures(strain.minimumCelsius(), strain.optimumCelsius(), strain.maximumCelsius());
        double stalled = strain.minimumCelsius();
        double working = strain.optimumCelsius();
        while (working - stalled > 0.01) {
            double middle = (stalled + working) / 2;
            if (cardinal.share(middle) < STALL_SHARE) {
                stalled = middle;
            } else {
                working = middle;
            }
        }
        return new YeastLimits(warm, working);
    }

    /** The stricter of both: the lower warm limit, the higher stall. */
    public YeastLimits and(YeastLimits other) {
        return new YeastLimits(Math.min(warmCelsius, other.warmCelsius), Math.max(stallCelsius, other.stallCelsius));
    }
}
