package undercroft.calc.conditioning;

import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.numeric.QuasiNormals;
import undercroft.calc.numeric.Spread;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.Interval;

/**
 * The model's uncertain constants, one array entry for each member of an ensemble, made from standard normal deviates.
 * The medians and spreads are assumptions calibrated on practice (two weeks at room temperature) and bracketed by the
 * literature named beside each.
 */
final class EnsembleParameters {
    /** How many deviates describe a member; further ones are those of bottles, instruments and people: {@link Offsets}. */
    static final int DIMENSIONS = 17;

    static final int RATE = 0;
    static final int LAG = 1;
    static final int MINIMUM = 2;
    static final int DOSE = 3;
    static final int SATURATION = 4;
    static final int TEMPERATURE = 5;
    static final int RESIDUAL = 6;
    static final int CLEAN_UP = 7;
    static final int DEATH = 8;
    static final int AIR_TRAPPED = 9;
    static final int AIR_AMOUNT = 10;
    static final int BEER_FACTOR = 11;
    static final int LEFTOVER = 12;
    static final int HIDDEN = 13;
    static final int HIDDEN_RATE = 14;
    static final int STRENGTH = 15;
    static final int CHIPS = 16;

    static final double GRAMS_PER_GRAM_HEXOSE = HiddenExtract.CARBON_DIOXIDE_PER_GRAM;

    /** Uptake at 21 °C, g/L a day. From 0.3-0.6 g per g dry cells and hour at 1-4 million cells/mL: 0.3-2.3. */
    private static final Interval RATE_PER_DAY = Interval.of(0.40, 1.0, 2.5);

    /** Lag at 21 °C, days. Fresh yeast over 0.2 d (de Andrés-Toro et al. 1998), starved yeast longer. */
    private static final Interval LAG_DAYS = Interval.of(0.3, 1.0, 3.3);

    /** Minimum temperature about the strain's own, K: spread over species in Salvadó et al. 2011. */
    private static final Interval MINIMUM_OFFSET = Interval.of(-2, 0, 2);

    /** Half-saturation, g/L hexose. */
    private static final Interval HALF_SATURATION = Interval.of(0.3, 1.0, 3.0);

    /** Loss of working cells at 21 °C, 1/day. */
    private static final Interval DEATH_PER_DAY = Interval.of(0.003, 0.010, 0.03);

    /** Clean-up after the sugar is gone, days at 21 °C. */
    private static final Interval CLEAN_UP_DAYS = Interval.of(2, 4, 8);

    /**
     * Acclimatised sparkling-wine yeast is faster: with fresh yeast (factor 1.6) this gives 3.5 g/L a day, which turns
     * 24 g/L of sugar at 11 % and 12 °C in about 50 days, against the 4 to 8 weeks published.
     */
    private static final double SPARKLING_WINE_RATE = 2.2;

    private static final int USUAL_SIZE = 512;

    /** The deviates that every batch of a shelf starts from, made once; read only. */
    private static final class Usual {
        static final double[][] DEVIATES = QuasiNormals.points(USUAL_SIZE, DIMENSIONS);
    }

    final int size;

    /** From this member on there is hidden extract; {@link #size} when no member has any. */
    final int firstHidden;

    private final double writtenDown;

    final double optimum;
    final double maximum;
    final double heatFactor;
    final double[] effectiveRate;
    final double[] lagDays;
    final double[] minimum;
    final double[] hexose;
    final double[] halfSaturation;
    final double[] temperatureZ;
    final double[] residual;

    /** What the priming sugar gives, of which one bottle gets more than another. */
    final double[] primed;

    /** What the priming sugar and the leftover give together: they ferment alike. */
    final double[] priming;

    /** What the hidden extract gives; 0 below {@link #firstHidden}. */
    final double[] hidden;

    final double[] hiddenPerDay;
    final double[] cleanUpDays;
    final double[] deathPerDay;
    final double[] airTrapped;
    final double[] airAmount;
    final double[] beerFactor;

    private EnsembleParameters(Refermentation beer, double[][] z, int firstHidden) {
        size = z.length;
        writtenDown = beer.primingGramsPerLitre().median();
        this.firstHidden = firstHidden;
        YeastStrain strain = beer.strain();
        optimum = strain.optimumCelsius();
        maximum = strain.maximumCelsius();
        heatFactor = YeastDeath.heatFactor(maximum);
        effectiveRate = new double[size];
        lagDays = new double[size];
        minimum = new double[size];
        hexose = new double[size];
        halfSaturation = new double[size];
        temperatureZ = new double[size];
        residual = new double[size];
        primed = new double[size];
        priming = new double[size];
        hidden = new double[size];
        hiddenPerDay = new double[size];
        cleanUpDays = new double[size];
        deathPerDay = new double[size];
        airTrapped = new double[size];
        airAmount = new double[size];
        beerFactor = new double[size];
        double rateFactor = beer.strengthFactor()
                * beer.state().rateFactor()
                * (strain == YeastStrain.SPARKLING_WINE ? SPARKLING_WINE_RATE : 1);
        // The cardinal model needs its optimum above the middle of the ends, whatever the deviate.
        double lowestMinimum = -15;
        double highestMinimum = Math.min(optimum - 5, 20);
        for (int m = 0; m < size; m++) {
            double[] at = z[m];
            effectiveRate[m] = rateFactor * Spread.at(RATE_PER_DAY, at[RATE]);
            lagDays[m] = beer.state().lagFactor() * Spread.at(LAG_DAYS, at[LAG]);
            double cold = strain.minimumCelsius() + Spread.normalAt(MINIMUM_OFFSET, at[MINIMUM]);
            minimum[m] = Math.max(lowestMinimum, Math.min(highestMinimum, cold));
            primed[m] = beer.primingGramsPerLitreAt(at[DOSE]);
            priming[m] = primed[m] + beer.leftover().gramsPerLitreAt(at[LEFTOVER]);
            hexose[m] = priming[m] / GRAMS_PER_GRAM_HEXOSE;
            halfSaturation[m] = Spread.at(HALF_SATURATION, at[SATURATION]);
            temperatureZ[m] = at[TEMPERATURE];
            residual[m] = Spread.at(beer.residualGramsPerLitre(), at[RESIDUAL]);
            cleanUpDays[m] = Spread.at(CLEAN_UP_DAYS, at[CLEAN_UP]);
            deathPerDay[m] = Spread.at(DEATH_PER_DAY, at[DEATH]);
            airTrapped[m] = beer.air().trappedAt(QuasiNormals.probability(at[AIR_TRAPPED]));
            airAmount[m] = beer.air().amountAt(QuasiNormals.probability(at[AIR_AMOUNT]));
            beerFactor[m] = Spread.at(beer.beerFactor(), at[BEER_FACTOR]);
            if (m >= firstHidden) {
                hidden[m] = beer.hidden().carbonDioxideAt(at[HIDDEN]);
                hiddenPerDay[m] = beer.hidden().perDayAt21().valueAt(at[HIDDEN_RATE]);
            }
        }
    }

    /** Standard normal deviates, members by parameters, spread evenly. */
    static double[][] deviates(int members) {
        return members == USUAL_SIZE ? Usual.DEVIATES : QuasiNormals.points(members, DIMENSIONS);
    }

    /** Members at their deviates, those from {@code firstHidden} on with hidden extract. */
    static EnsembleParameters of(Refermentation beer, double[][] z, int firstHidden) {
        return new EnsembleParameters(beer, z, firstHidden);
    }

    /** The priming sugar over what was written down; 1 where there was none. */
    double doseFactor(int m) {
        return writtenDown > 0 ? primed[m] / writtenDown : 1;
    }

    /** Carbon dioxide when all is gone that the yeast can reach, g per litre of beer. */
    double finalGramsPerLitre(int m) {
        return residual[m] + priming[m] + hidden[m];
    }
}
