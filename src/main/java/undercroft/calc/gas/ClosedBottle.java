package undercroft.calc.gas;

import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * The pressure in a capped bottle: CO2 shared between beer and headspace, air and water vapour beside it, beer that
 * expands with warmth and with dissolved CO2, a wall that gives a little. Immutable; build one and ask it often.
 *
 * <p>Model: CO2 in the gas p V / (ZRT) with Z = 1 + Bp/RT; in the beer {@link CarbonDioxideSolubility} times the beer
 * factor; nitrogen and oxygen each by {@link DissolvedAir}; glass 27e-6 per K in volume (soda-lime, 3 × 9.0e-6) and
 * 3.5e-5 per bar (thin cylinder, radius 30 mm, wall 2.5 mm, 70 GPa, Poisson 0.22); plastic by {@link #swellingPerBar} and,
 * on the careful side, expanding no more than glass; beer by {@link BeerDensity} and the
 * compressibility of water; 32.3 cm³ for each mole dissolved since capping. Beer is taken to hold, when capped, what it
 * would keep open to the air at the warmer of its capping temperature and 20 °C (assumption). Plastic gives more than
 * glass, so for it the pressure comes out somewhat high.
 */
public final class ClosedBottle {
    static final double GLASS_EXPANSION_PER_KELVIN = 27e-6;
    static final double GLASS_SWELLING_PER_BAR = 3.5e-5;
    static final double LITRES_PER_DISSOLVED_MOLE = CarbonDioxideSolubility.DISSOLVED_CUBIC_CENTIMETRES_PER_MOLE * 1e-3;

    /** Most CO2 the model answers for: 12 volumes, g/L. */
    public static final double MOST_GRAMS_PER_LITRE = 12 * Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;

    /** What beer has when it is bottled unless it was measured, °C (assumption; common practice is a room's warmth). */
    public static final double USUAL_CAPPING_CELSIUS = 20;

    private static final double PLASTIC_BAR = 40_000;
    private static final double PLASTIC_POISSON = 0.4;
    private static final double USUAL_BEER_FACTOR = 0.95;
    private static final double USUAL_FERMENTING_CELSIUS = 20;

    private final double brimfulLitres;
    private final double fillLitres;
    private final double atmosphereBar;
    private final double airMoles;
    private final double dissolvedWhenCappedMoles;
    private final double swellingPerBar;
    private final WarmthTerms warmth;

    private ClosedBottle(
            double brimfulMillilitres,
            double fillMillilitres,
            double abvPercent,
            double cappedAtCelsius,
            double atmosphereBar,
            double dissolvedGramsPerLitre,
            double swellingPerBar) {
        this.swellingPerBar = swellingPerBar;
        this.brimfulLitres = brimfulMillilitres / 1000;
        this.fillLitres = fillMillilitres / 1000;
        this.atmosphereBar = atmosphereBar;
        double headspace = glassLitresAt(cappedAtCelsius) - fillLitres;
        if (headspace <= 0) {
            throw new InvalidInput("fillMillilitres", "cellar.fault.no-headspace-capped");
        }
        double vapour = WaterVapour.overBeerBar(cappedAtCelsius);
        this.airMoles = (atmosphereBar - vapour) * headspace / (CarbonDioxideSolubility.R * (cappedAtCelsius + 273.15));
        this.dissolvedWhenCappedMoles = fillLitres * dissolvedGramsPerLitre / CarbonDioxideSolubility.MOLAR_MASS;
        this.warmth = new WarmthTerms(BeerDensity.alcoholByWeightPercent(abvPercent), cappedAtCelsius);
    }

    /**
     * A glass bottle as it is capped.
     *
     * @param brimfulMillilitres what it holds to the brim at 20 °C, 50 to 11,000 mL
     * @param fillMillilitres beer in it at the temperature of capping, less than the brimful
     * @param abvPercent alcohol, 0 to 20 % by volume
     * @param cappedAtCelsius temperature of the beer, and of the air over it, at capping, −2 to 40 °C
     * @param atmosphereBar air pressure at capping and around the bottle since, 0.5 to 1.1 bar
     * @throws InvalidInput outside these ranges, or when no headspace is left
     */
    public static ClosedBottle of(
            double brimfulMillilitres,
            double fillMillilitres,
            double abvPercent,
            double cappedAtCelsius,
            double atmosphereBar) {
        return made(
                brimfulMillilitres,
                fillMillilitres,
                abvPercent,
                cappedAtCelsius,
                atmosphereBar,
                heldOpen(cappedAtCelsius, atmosphereBar),
                GLASS_SWELLING_PER_BAR);
    }

    /**
     * As {@link #of(double, double, double, double, double)}, for beer whose CO2 at capping is known: it is already part of
     * the fill and does not swell it further.
     *
     * @param dissolvedGramsPerLitre CO2 in the beer when filled, 0 to 12 g/L
     */
    public static ClosedBottle of(
            double brimfulMillilitres,
            double fillMillilitres,
            double abvPercent,
            double cappedAtCelsius,
            double atmosphereBar,
            double dissolvedGramsPerLitre) {
        Check.within("dissolvedGramsPerLitre", dissolvedGramsPerLitre, 0, 12, "g/L");
        return made(
                brimfulMillilitres,
                fillMillilitres,
                abvPercent,
                cappedAtCelsius,
                atmosphereBar,
                dissolvedGramsPerLitre,
                GLASS_SWELLING_PER_BAR);
    }

    /** A make of bottle, glass or plastic, with its usual fill; the other arguments as above. */
    public static ClosedBottle of(BottleType type, double abvPercent, double cappedAtCelsius, double atmosphereBar) {
        return made(
                type.brimfulMillilitres(),
                type.fillMillilitres(),
                abvPercent,
                cappedAtCelsius,
                atmosphereBar,
                heldOpen(cappedAtCelsius, atmosphereBar),
                swellingPerBar(type));
    }

    private static ClosedBottle made(
            double brimful,
            double fill,
            double abv,
            double celsius,
            double atmosphere,
            double dissolved,
            double swellingPerBar) {
        checkCapping(brimful, fill, abv, celsius, atmosphere);
        return new ClosedBottle(brimful, fill, abv, celsius, atmosphere, dissolved, swellingPerBar);
    }

    private static double heldOpen(double cappedAtCelsius, double atmosphereBar) {
        Check.within("cappedAtCelsius", cappedAtCelsius, -2, 40, "°C");
        Check.within("atmosphereBar", atmosphereBar, 0.5, 1.1, "bar");
        double settled = Math.max(USUAL_FERMENTING_CELSIUS, cappedAtCelsius);
        return CarbonDioxideSolubility.gramsPerLitre(
                settled, atmosphereBar - WaterVapour.overBeerBar(settled), USUAL_BEER_FACTOR);
    }

    /**
     * By what share of its volume a bottle grows with a bar: for plastic as a thin closed cylinder, r / (E t) (5/2 − 2ν)
     * with E = 4 GPa and ν = 0.4 (handbook figures for stretched PET, from memory), about 4e-3 for half a litre.
     */
    public static double swellingPerBar(BottleType type) {
        if (type.isGlass()) {
            return GLASS_SWELLING_PER_BAR;
        }
        double radius = type.bodyMillimetres() / 2 - type.wallMillimetres();
        return radius / (PLASTIC_BAR * type.wallMillimetres()) * (2.5 - 2 * PLASTIC_POISSON);
    }

    private static void checkCapping(double brimful, double fill, double abv, double celsius, double atmosphere) {
        Check.within("brimfulMillilitres", brimful, 50, 11_000, "mL");
        Check.within("fillMillilitres", fill, 10, 11_000, "mL");
        if (fill >= brimful) {
            throw new InvalidInput("fillMillilitres", "cellar.fault.fill-over-brim");
        }
        Check.within("abvPercent", abv, 0, 20, "%");
        Check.within("cappedAtCelsius", celsius, -2, 40, "°C");
        Check.within("atmosphereBar", atmosphere, 0.5, 1.1, "bar");
    }

    /**
     * The bottle at rest at a temperature, solved to 1e-12 bar with CO2 conserved to 1e-12. Not for inner loops.
     *
     * @param celsius −5 to 60 °C
     * @param totalGramsPerLitre all CO2 in the bottle, per litre of beer filled, 0 to 12 volumes
     * @param beerFactor solubility in beer over that in water, 0.5 to 1.1
     * @param airAmount share of the headspace that was air at capping, 0 (purged) to 1; the first 0.79 count as nitrogen,
     *     the rest as oxygen, so that 0.79 is air whose oxygen the yeast has taken
     * @param airTrapped 0 = nitrogen and oxygen dissolve to equilibrium, 1 = all of them stay in the headspace; between,
     *     their solubility counts 1 − airTrapped
     * @throws IllegalArgumentException outside these ranges
     */
    public BottleState at(
            double celsius, double totalGramsPerLitre, double beerFactor, double airAmount, double airTrapped) {
        check(celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped);
        return new GasBalance(this, celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped).state();
    }

    /**
     * The gauge pressure alone, bar, by the same physics and within 1e-4 bar of {@link #at}; arguments as there. Allocates
     * nothing unless the headspace has all but vanished (then it asks {@link #at}).
     *
     * <p>Newton's method on CO2 pressure and total pressure together, with the exact slopes; it starts from a gauge pressure
     * nearby, such as the one of the moment before, and needs one step from 0.1 bar away, two or three from far off. For many
     * members of one bottle see {@link PressureTable}.
     *
     * @param guessBar gauge pressure to start from, bar; NaN for none
     * @throws IllegalArgumentException outside the ranges of {@link #at}
     */
    public double gaugeBar(
            double celsius,
            double totalGramsPerLitre,
            double beerFactor,
            double airAmount,
            double airTrapped,
            double guessBar) {
        check(celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped);
        double bar = GasNewton.totalBar(
                this, celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped, guessBar + atmosphereBar);
        if (Double.isNaN(bar)) {
            return at(celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped)
                    .gaugeBar();
        }
        return bar - atmosphereBar;
    }

    /**
     * The coldest temperature from 0 to 60 °C at which the beer fills the bottle, once the air has dissolved; empty when it
     * never does. From there pressure rises by 2 to 4 bar per K. Arguments and faults as {@link #at}.
     */
    public OptionalDouble liquidFullCelsius(double totalGramsPerLitre, double beerFactor, double airAmount) {
        check(0, totalGramsPerLitre, beerFactor, airAmount, 0);
        for (int celsius = 0; celsius <= Require.WARMEST_CELSIUS; celsius++) {
            if (gasExcess(celsius, totalGramsPerLitre, beerFactor, airAmount) <= 0) {
                return OptionalDouble.of(
                        celsius == 0
                                ? 0
                                : new BrentSolver(1e-7)
                                        .solve(
                                                100,
                                                t -> gasExcess(t, totalGramsPerLitre, beerFactor, airAmount),
                                                celsius - 1.0,
                                                celsius));
            }
        }
        return OptionalDouble.empty();
    }

    private double gasExcess(double celsius, double totalGramsPerLitre, double beerFactor, double airAmount) {
        return new GasBalance(this, celsius, totalGramsPerLitre, beerFactor, airAmount, 0).excessWhenFull();
    }

    static void check(
            double celsius, double totalGramsPerLitre, double beerFactor, double airAmount, double airTrapped) {
        Require.celsius(celsius);
        Require.within("totalGramsPerLitre", totalGramsPerLitre, 0, MOST_GRAMS_PER_LITRE);
        Require.within("beerFactor", beerFactor, 0.5, 1.1);
        Require.within("airAmount", airAmount, 0, 1);
        Require.within("airTrapped", airTrapped, 0, 1);
    }

    double glassLitresAt(double celsius) {
        return brimfulLitres * (1 + GLASS_EXPANSION_PER_KELVIN * (celsius - 20));
    }

    double swellingPerBar() {
        return swellingPerBar;
    }

    double fillLitres() {
        return fillLitres;
    }

    /** Air pressure around the bottle, bar. */
    public double atmosphereBar() {
        return atmosphereBar;
    }

    /** Moles of gas in the headspace had it all been air at capping. */
    double airMoles() {
        return airMoles;
    }

    double dissolvedWhenCappedMoles() {
        return dissolvedWhenCappedMoles;
    }

    WarmthTerms warmth() {
        return warmth;
    }
}
