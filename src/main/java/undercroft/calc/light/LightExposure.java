package undercroft.calc.light;

import undercroft.quantity.Interval;

/**
 * The light one lot of bottles has had so far, added up over all its stays.
 *
 * @param wall of the bottles
 * @param beerFactor from {@link BeerSensitivity}
 * @param bestDose dose in D, best estimate
 * @param guessedDose the part of it that rests on a guessed illuminance
 */
public record LightExposure(Wall wall, double beerFactor, double bestDose, double guessedDose) {
    public LightExposure {
        boolean finite = Double.isFinite(beerFactor) && Double.isFinite(bestDose);
        if (!finite || beerFactor < 0 || !(guessedDose >= 0) || bestDose < guessedDose) {
            throw new IllegalArgumentException("no exposure: " + beerFactor + ", " + bestDose + ", " + guessedDose);
        }
    }

    /** Bottles that have seen no light yet. */
    public static LightExposure none(Wall wall, double beerFactor) {
        return new LightExposure(wall, beerFactor, 0, 0);
    }

    /** The same bottles after a further stay. */
    public LightExposure plus(LightStay stay) {
        double added = LightDose.perHour(wall.colour(), wall.millimetres(), stay.source(), stay.lux())
                * beerFactor
                * stay.hours()
                * stay.cover().share();
        return new LightExposure(wall, beerFactor, bestDose + added, guessedDose + (stay.luxMeasured() ? 0 : added));
    }

    /** By what factor the dose may be off either way. */
    public double uncertaintyFactor() {
        return LightUncertainty.factor(wall.colour(), bestDose > 0 ? guessedDose / bestDose : 0);
    }

    /** The dose in D with its 5 to 95 % span; exactly zero when no light got in. */
    public Interval dose() {
        double factor = uncertaintyFactor();
        return Interval.of(bestDose / factor, bestDose, bestDose * factor);
    }

    /** What the best estimate means for the taste. */
    public LightBand band() {
        return LightBand.of(bestDose);
    }
}
