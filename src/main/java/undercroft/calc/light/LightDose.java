package undercroft.calc.light;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightSource;
import undercroft.quantity.Check;

/**
 * Light taken up, in units D of the dose at which a taster just notices it (about 4 ng/L of the thiol; Goldstein, Rader and
 * Murakami 1993, JASBC 51:70 give 1 to 5 ng/L for pale lager). Doses add over places and never fade; lux times hours counts
 * (reciprocity is assumed).
 *
 * <p>One D is 4,815 J/m² of effective light, which is 45 s of the ASTM G173 sun (109.5 klx) on 2.5 mm of clear glass and a
 * beer of 8 EBC and 25 IBU. Those 45 s are the geometric mean of handbook statements from under 10 s to a few minutes, not a
 * measurement; see {@link LightUncertainty}.
 */
public final class LightDose {
    private static final double JOULES_PER_SQUARE_METRE_OF_ONE_DOSE = 4_815;
    private static final double SECONDS_PER_HOUR = 3_600;
    private static final int FROM = 300;
    private static final int TO = 560;
    /** Coarser steps would miss the mercury lines of fluorescent lamps. */
    private static final int STEP = 5;

    private static final Map<LightSource, double[]> DOSE_PER_LUX_HOUR = dosePerLuxHour();

    private LightDose() {}

    /**
     * Dose per hour for the reference beer.
     *
     * @param wallMillimetres 0.05 to 20 mm
     * @param lux illuminance on the bottle, 0 to 200,000 lx
     * @return D per hour, 0 and up; exactly 0 for an opaque wall or no light
     * @throws undercroft.quantity.InvalidInput for a number outside its range
     */
    public static double perHour(GlassColour colour, double wallMillimetres, LightSource source, double lux) {
        Check.within("lux", lux, 0, 200_000, "lx");
        return lux * perLuxHour(new Wall(colour, wallMillimetres), source);
    }

    /**
     * Hours until a taster just notices, {@link Double#POSITIVE_INFINITY} for never.
     *
     * @param beerFactor sensitivity of the beer, from {@link BeerSensitivity}; 0 and up
     */
    public static double hoursToPerceptible(
            GlassColour colour, double wallMillimetres, LightSource source, double lux, double beerFactor) {
        return inverse(perHour(colour, wallMillimetres, source, lux) * checked(beerFactor));
    }

    /** Lux times hours until a taster just notices, {@link Double#POSITIVE_INFINITY} for never. */
    public static double luxHoursToPerceptible(
            GlassColour colour, double wallMillimetres, LightSource source, double beerFactor) {
        return inverse(perLuxHour(new Wall(colour, wallMillimetres), source) * checked(beerFactor));
    }

    private static double perLuxHour(Wall wall, LightSource source) {
        if (wall.colour() == GlassColour.OPAQUE) {
            return 0;
        }
        double[] weights = DOSE_PER_LUX_HOUR.get(source);
        double dose = 0;
        for (int i = 0; i < weights.length; i++) {
            dose += weights[i] * wall.transmittanceFilled(FROM + i * STEP);
        }
        return dose;
    }

    private static Map<LightSource, double[]> dosePerLuxHour() {
        double scale = STEP * SECONDS_PER_HOUR / JOULES_PER_SQUARE_METRE_OF_ONE_DOSE;
        Map<LightSource, double[]> all = new EnumMap<>(LightSource.class);
        for (LightSource source : LightSource.values()) {
            DoubleUnaryOperator irradiance = Illumination.perLux(source);
            all.put(
                    source,
                    IntStream.rangeClosed(0, (TO - FROM) / STEP)
                            .mapToDouble(i -> FROM + i * STEP)
                            .map(nm -> irradiance.applyAsDouble(nm) * ActionSpectrum.at(nm) * scale)
                            .toArray());
        }
        return all;
    }

    private static double inverse(double dosePerUnit) {
        return dosePerUnit > 0 ? 1 / dosePerUnit : Double.POSITIVE_INFINITY;
    }

    private static double checked(double beerFactor) {
        if (!(beerFactor >= 0 && beerFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("beer factor " + beerFactor);
        }
        return beerFactor;
    }
}
