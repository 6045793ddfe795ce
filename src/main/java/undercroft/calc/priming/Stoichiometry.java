package undercroft.calc.priming;

/**
 * Grams of carbon dioxide from one gram of a pure sugar when all of it becomes ethanol and CO2: C6H12O6 → 2 C2H5OH + 2 CO2,
 * disaccharides taking up one water first. Atomic weights: IUPAC abridged standard values (C 12.011, H 1.008, O 15.999).
 */
public final class Stoichiometry {
    private static final double WATER = 18.015;
    private static final double CARBON_DIOXIDE = 44.009;
    private static final double GLUCOSE = 180.156;

    /** Glucose or fructose, water-free. */
    public static final double HEXOSE = 2 * CARBON_DIOXIDE / GLUCOSE;

    /** Glucose monohydrate, the usual corn sugar. */
    public static final double GLUCOSE_MONOHYDRATE = 2 * CARBON_DIOXIDE / (GLUCOSE + WATER);

    /** Sucrose or maltose, water-free. */
    public static final double DISACCHARIDE = 4 * CARBON_DIOXIDE / (2 * GLUCOSE - WATER);

    /**
     * CO2 from one gram of real extract in a main fermentation: 2.0665 g extract gives 1 g ethanol, 0.9565 g CO2 and 0.11 g
     * yeast (Balling's factors).
     */
    public static final double BALLING_EXTRACT = 0.9565 / 2.0665;

    /**
     * Share of the theory reached in the bottle: some sugar becomes yeast. Balling's factors leave 0.90 of theory for
     * maltose; a bottle makes less new yeast, so 0.95 is expected and 1.00 kept for pressure (derived, no measurement).
     */
    public static final double LOW_COMPLETENESS = 0.90;

    public static final double COMPLETENESS = 0.95;

    public static final double FULL_COMPLETENESS = 1.00;

    private Stoichiometry() {}
}
