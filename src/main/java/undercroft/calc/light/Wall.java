package undercroft.calc.light;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import undercroft.catalogue.GlassColour;
import undercroft.quantity.Check;

/**
 * The wall of a bottle as light meets it. Absorbance grows with the thickness (Beer and Lambert); surfaces reflect by
 * Fresnel's formula at normal incidence.
 *
 * @param colour material
 * @param millimetres thickness, 0.05 to 20 mm; without meaning for an opaque wall
 */
public record Wall(GlassColour colour, double millimetres) {
    private static final double GLASS_TABLE_MILLIMETRES = 2.5;
    private static final double PET_TABLE_MILLIMETRES = 0.35;
    private static final double THIN_BROWN_MILLIMETRES = 2.0;
    private static final double PET_INDEX = 1.575;
    private static final double BEER_INDEX = 1.345;
    private static final Map<GlassColour, Spectrum> ABSORBANCE = absorbances();

    public Wall {
        Objects.requireNonNull(colour, "colour");
        Check.within("wallMillimetres", millimetres, 0.05, 20, "mm");
    }

    /** The thickness the table of this material was made for: 2.5 mm glass, 0.35 mm plastic. */
    static Wall ofTable(GlassColour colour) {
        return new Wall(colour, tableMillimetres(colour));
    }

    /**
     * Where nobody measured it: 2.0 mm of brown glass, as thin as one-way bottles are made, since brown owes all it does to
     * its thickness; 2.5 mm of other glass, 0.35 mm of plastic (from memory).
     */
    public static Wall usual(GlassColour colour) {
        return colour == GlassColour.AMBER ? new Wall(colour, THIN_BROWN_MILLIMETRES) : ofTable(colour);
    }

    /**
     * Share of light that crosses the material itself, 0 to 1, without its surfaces: 10^−A(λ).
     *
     * @param nanometres 300 to 560 nm; zero is given outside, where nothing is known
     */
    public double internalTransmittance(double nanometres) {
        if (colour == GlassColour.OPAQUE || !(nanometres >= 300 && nanometres <= 560)) {
            return 0;
        }
        return Math.pow(10, -ABSORBANCE.get(colour).at(nanometres) * millimetres / tableMillimetres(colour));
    }

    /** Share that crosses the wall in air, as a spectrophotometer sees it: (1 − R)² τ / (1 − R² τ²). */
    public double transmittanceInAir(double nanometres) {
        double tau = internalTransmittance(nanometres);
        double r = reflectance(1, refractiveIndex(nanometres));
        return (1 - r) * (1 - r) * tau / (1 - r * r * tau * tau);
    }

    /** Share that reaches the beer behind the wall: (1 − R air) (1 − R beer) τ. */
    public double transmittanceFilled(double nanometres) {
        double n = refractiveIndex(nanometres);
        return (1 - reflectance(1, n)) * (1 - reflectance(n, BEER_INDEX)) * internalTransmittance(nanometres);
    }

    /** Fresnel reflectance at normal incidence between two refractive indices. */
    static double reflectance(double index, double otherIndex) {
        double ratio = (index - otherIndex) / (index + otherIndex);
        return ratio * ratio;
    }

    /** Soda-lime glass: Rubin 1985, n = 1.513 − 0.003169 µm⁻² λ² + 0.003962 µm² / λ². PET and beer: from memory. */
    private double refractiveIndex(double nanometres) {
        if (isPlastic(colour)) {
            return PET_INDEX;
        }
        double squareMicrometres = nanometres * nanometres * 1e-6;
        return 1.513 - 0.003169 * squareMicrometres + 0.003962 / squareMicrometres;
    }

    private static double tableMillimetres(GlassColour colour) {
        return isPlastic(colour) ? PET_TABLE_MILLIMETRES : GLASS_TABLE_MILLIMETRES;
    }

    private static boolean isPlastic(GlassColour colour) {
        return colour == GlassColour.PET_CLEAR || colour == GlassColour.PET_AMBER;
    }

    private static Map<GlassColour, Spectrum> absorbances() {
        SpectralTable table = SpectralTable.read("glass_10nm.csv");
        Map<GlassColour, Spectrum> all = new EnumMap<>(GlassColour.class);
        for (GlassColour colour : GlassColour.values()) {
            if (colour != GlassColour.OPAQUE) {
                all.put(colour, table.column(colour.name().toLowerCase(Locale.ROOT)));
            }
        }
        return all;
    }
}
