package undercroft.calc.chill;

import java.util.OptionalDouble;
import undercroft.calc.gas.BeerDensity;

/**
 * When beer freezes, how far, and when the ice no longer fits. Freezing beer is a bursting hazard: from about −4.5 °C an
 * ordinary beer swells by more than a 4 % headspace.
 */
public final class Freezing {
    /** Ice takes this much more room than the water it was, as a share (density 916.7 over 999.8 kg/m³ at 0 °C). */
    public static final double ICE_SWELLING = 0.0905;

    /** Litres of water in a litre of ordinary beer (4 % alcohol and 4 % extract by weight). */
    public static final double USUAL_WATER_SHARE = 0.92;

    private static final double WARMEST_CELSIUS = 60;
    private static final double BEER_KILOGRAMS_PER_LITRE = 1.01;

    private Freezing() {}

    /**
     * Where ice begins to form, °C: −(0.42 A + 0.04 E + 0.2) (a brewing reference, probably De Clerck). A version without
     * the bracket is in circulation and has extract raise the freezing point. Beer may supercool a few degrees below.
     *
     * @param alcoholByWeightPercent A, g/100 g, 0 to 20
     * @param originalExtractPlato E, extract before fermentation, °P, 0 to 60
     * @throws IllegalArgumentException outside these ranges
     */
    public static double pointCelsius(double alcoholByWeightPercent, double originalExtractPlato) {
        within("alcoholByWeightPercent", alcoholByWeightPercent, 0, 20);
        within("originalExtractPlato", originalExtractPlato, 0, 60);
        return -(0.42 * alcoholByWeightPercent + 0.04 * originalExtractPlato + 0.2);
    }

    /**
     * The same from what is known of a finished beer; the original extract by Balling's relation OE = 100 (2.0665 A + RE) /
     * (100 + 1.0665 A).
     *
     * @param abvPercent 0 to 20 % by volume
     * @param realExtractGramsPerLitre extract left in the beer, 0 to 200 g/L
     * @throws IllegalArgumentException outside these ranges
     */
    public static double ofBeerCelsius(double abvPercent, double realExtractGramsPerLitre) {
        within("abvPercent", abvPercent, 0, 20);
        double alcohol = BeerDensity.alcoholByWeightPercent(abvPercent);
        double extract = extractByWeightPercent(realExtractGramsPerLitre);
        return pointCelsius(alcohol, 100 * (2.0665 * alcohol + extract) / (100 + 1.0665 * alcohol));
    }

    /** Litres of water in a litre of beer with that alcohol and extract; ranges as {@link #ofBeerCelsius}. */
    public static double waterShare(double abvPercent, double realExtractGramsPerLitre) {
        double extract = extractByWeightPercent(realExtractGramsPerLitre);
        double water = 100 - BeerDensity.alcoholByWeightPercent(abvPercent) - extract;
        return Math.min(1, BEER_KILOGRAMS_PER_LITRE * water / 100);
    }

    private static double extractByWeightPercent(double gramsPerLitre) {
        return within("realExtractGramsPerLitre", gramsPerLitre, 0, 200) / (10 * BEER_KILOGRAMS_PER_LITRE);
    }

    /**
     * Share of the water that is ice at rest, 1 − t_f / t below the freezing point and 0 above: what is left must be
     * concentrated enough to freeze at t (ideal dilute solution).
     *
     * @param celsius temperature of the beer, −40 to 60 °C
     * @param pointCelsius freezing point, −15 to below 0 °C
     * @throws IllegalArgumentException outside these ranges
     */
    public static double iceShare(double celsius, double pointCelsius) {
        within("celsius", celsius, -40, WARMEST_CELSIUS);
        checkPoint(pointCelsius);
        return celsius < pointCelsius ? 1 - pointCelsius / celsius : 0;
    }

    /**
     * By what share of its volume freezing beer swells: ice share × water share × 0.0905.
     *
     * @param celsius −40 to 60 °C
     * @param pointCelsius freezing point, −15 to below 0 °C
     * @param waterShare litres of water in a litre of beer, 0.5 to 1; {@link #USUAL_WATER_SHARE} will do
     * @throws IllegalArgumentException outside these ranges
     */
    public static double swelling(double celsius, double pointCelsius, double waterShare) {
        within("waterShare", waterShare, 0.5, 1);
        return ICE_SWELLING * waterShare * iceShare(celsius, pointCelsius);
    }

    /**
     * The temperature below which the swelling exceeds the headspace, °C: a bottle at rest there is full of ice and beer.
     * Empty when that is not reached above −40 °C.
     *
     * @param pointCelsius freezing point, −15 to below 0 °C
     * @param waterShare 0.5 to 1
     * @param headspaceShare headspace over volume of beer, 0 to 1
     * @throws IllegalArgumentException outside these ranges
     */
    public static OptionalDouble burstingCelsius(double pointCelsius, double waterShare, double headspaceShare) {
        checkPoint(pointCelsius);
        within("waterShare", waterShare, 0.5, 1);
        within("headspaceShare", headspaceShare, 0, 1);
        double ice = headspaceShare / (ICE_SWELLING * waterShare);
        if (ice >= 1 || pointCelsius / (1 - ice) < -40) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(pointCelsius / (1 - ice));
    }

    private static void checkPoint(double pointCelsius) {
        if (!(pointCelsius >= -15 && pointCelsius < 0)) {
            throw new IllegalArgumentException("pointCelsius is " + pointCelsius + ", outside -15 to below 0");
        }
    }

    private static double within(String what, double value, double min, double max) {
        if (!(value >= min && value <= max)) {
            throw new IllegalArgumentException(what + " is " + value + ", outside " + min + " to " + max);
        }
        return value;
    }
}
