package undercroft.calc.gas;

/**
 * One bottle's pressure prepared for thousands of questions: {@link ClosedBottle#gaugeBar} on a grid of temperature and
 * CO2, with how it answers to beer factor and air. Within 0.03 bar of the full model where the headspace is not about to
 * vanish; built in a few milliseconds. Immutable.
 *
 * <p>Between grid points: straight lines in temperature (1.25 K) and CO2; beer factor by its reciprocal, to which CO2
 * pressure is nearly proportional; trapped air by a parabola through 0, ½ and 1; the amount of air in two straight
 * pieces, from none to the nitrogen of a full headspace (0.79) and on with its oxygen to 1.
 */
public final class PressureTable {
    private static final double COLDEST = -5;
    static final double STEP_KELVIN = 1.25;
    private static final int ROWS = 53;
    private static final int COLUMNS = 15;
    private static final double NITROGEN = DissolvedAir.NITROGEN_SHARE;
    private static final double FACTOR_STEP = 0.05;

    private final double middleFactor;
    private final double stepsPerGram;
    private final double[] dissolving = new double[ROWS * COLUMNS];
    private final double[] half = new double[ROWS * COLUMNS];
    private final double[] trapped = new double[ROWS * COLUMNS];
    private final double[] perReciprocalFactor = new double[ROWS * COLUMNS];
    private final double[] without = new double[ROWS * COLUMNS];
    private final double[] perOxygenDissolving = new double[ROWS * COLUMNS];
    private final double[] perOxygenTrapped = new double[ROWS * COLUMNS];

    private PressureTable(ClosedBottle bottle, double mostGramsPerLitre, double middleFactor) {
        this.middleFactor = middleFactor;
        this.stepsPerGram = (COLUMNS - 1) / mostGramsPerLitre;
        double guess = 0;
        for (int row = 0; row < ROWS; row++) {
            double celsius = COLDEST + row * STEP_KELVIN;
            for (int column = 0; column < COLUMNS; column++) {
                int cell = row * COLUMNS + column;
                double grams = column / stepsPerGram;
                guess = bottle.gaugeBar(celsius, grams, middleFactor, NITROGEN, 0.5, guess);
                half[cell] = guess;
                dissolving[cell] = bottle.gaugeBar(celsius, grams, middleFactor, NITROGEN, 0, guess);
                trapped[cell] = bottle.gaugeBar(celsius, grams, middleFactor, NITROGEN, 1, guess);
                without[cell] = bottle.gaugeBar(celsius, grams, middleFactor, 0, 0, guess);
                double lower = middleFactor - FACTOR_STEP;
                double atLower = bottle.gaugeBar(celsius, grams, lower, NITROGEN, 0.5, guess);
                perReciprocalFactor[cell] = (atLower - guess) / (1 / lower - 1 / middleFactor);
                perOxygenDissolving[cell] = slope(bottle, celsius, grams, 0, dissolving[cell]);
                perOxygenTrapped[cell] = slope(bottle, celsius, grams, 1, trapped[cell]);
            }
        }
    }

    private double slope(ClosedBottle bottle, double celsius, double grams, double trapped, double ofNitrogen) {
        double full = bottle.gaugeBar(celsius, grams, middleFactor, 1, trapped, ofNitrogen);
        return (full - ofNitrogen) / (1 - NITROGEN);
    }

    /**
     * Prepares a bottle.
     *
     * @param mostGramsPerLitre most CO2 that will be asked for, per litre of beer filled, above 0, at most 12 volumes
     * @param middleFactor beer factor in the middle of those that will be asked for, 0.6 to 1.05
     */
    public static PressureTable of(ClosedBottle bottle, double mostGramsPerLitre, double middleFactor) {
        if (!(mostGramsPerLitre > 0) || mostGramsPerLitre > ClosedBottle.MOST_GRAMS_PER_LITRE) {
            throw new IllegalArgumentException(
                    "mostGramsPerLitre is " + mostGramsPerLitre + ", outside 0 to 12 volumes");
        }
        Require.within("middleFactor", middleFactor, 0.6, 1.05);
        return new PressureTable(bottle, mostGramsPerLitre, middleFactor);
    }

    /** How a beer factor enters {@link Row#ofTerms}. */
    public double factorTerm(double beerFactor) {
        return 1 / beerFactor - 1 / middleFactor;
    }

    /** How an amount of air enters {@link Row#ofTerms}: below zero for less than the nitrogen of a full headspace. */
    public static double amountTerm(double airAmount) {
        return airAmount < NITROGEN ? airAmount / NITROGEN - 1 : airAmount - NITROGEN;
    }

    /** How the share of trapped air enters {@link Row#ofTerms}. */
    public static double airTerm(double airTrapped) {
        return airTrapped - 0.5;
    }

    /** An empty row to be filled for a temperature; reuse it, not across threads. */
    public Row row() {
        return new Row();
    }

    /** The table at one temperature. */
    public final class Row {
        private final double[] atHalf = new double[COLUMNS];
        private final double[] linear = new double[COLUMNS];
        private final double[] square = new double[COLUMNS];
        private final double[] byFactor = new double[COLUMNS];
        private final double[] airless = new double[COLUMNS];
        private final double[] byOxygen = new double[COLUMNS];
        private final double[] byOxygenAndAir = new double[COLUMNS];

        private Row() {}

        /**
         * Sets the row to a temperature.
         *
         * @param celsius held to −5 to 60 °C, the range of the model
         */
        public Row at(double celsius) {
            double place = Math.max(0, Math.min(ROWS - 1.000001, (celsius - COLDEST) / STEP_KELVIN));
            int row = (int) place;
            double share = place - row;
            for (int column = 0; column < COLUMNS; column++) {
                int cell = row * COLUMNS + column;
                double h = between(half, cell, share);
                double d = between(dissolving, cell, share);
                double t = between(trapped, cell, share);
                atHalf[column] = h;
                linear[column] = t - d;
                square[column] = 2 * (t + d - 2 * h);
                byFactor[column] = between(perReciprocalFactor, cell, share);
                airless[column] = between(without, cell, share);
                double loose = between(perOxygenDissolving, cell, share);
                double kept = between(perOxygenTrapped, cell, share);
                byOxygen[column] = (loose + kept) / 2;
                byOxygenAndAir[column] = kept - loose;
            }
            return this;
        }

        private double between(double[] table, int cell, double share) {
            return table[cell] + share * (table[cell + COLUMNS] - table[cell]);
        }

        /**
         * Gauge pressure, bar.
         *
         * @param gramsPerLitre CO2 in the bottle per litre of beer filled; above the table's most it is carried on straight
         * @param beerFactor,airAmount,airTrapped as {@link ClosedBottle#at}
         */
        public double gaugeBar(double gramsPerLitre, double beerFactor, double airAmount, double airTrapped) {
            return ofTerms(gramsPerLitre, factorTerm(beerFactor), amountTerm(airAmount), airTerm(airTrapped));
        }

        /**
         * The same from terms worked out beforehand, for loops that ask one bottle again and again.
         *
         * @param factor,amount,air from {@link #factorTerm}, {@link #amountTerm} and {@link #airTerm}
         */
        public double ofTerms(double gramsPerLitre, double factor, double amount, double air) {
            double place = Math.max(0, gramsPerLitre * stepsPerGram);
            int column = Math.min(COLUMNS - 2, (int) place);
            double share = place - column;
            double left = value(column, air, factor, amount);
            return left + share * (value(column + 1, air, factor, amount) - left);
        }

        private double value(int column, double air, double factor, double amount) {
            double nitrogen = atHalf[column] + air * (linear[column] + air * square[column]);
            double more = amount < 0
                    ? amount * (nitrogen - airless[column])
                    : amount * (byOxygen[column] + air * byOxygenAndAir[column]);
            return nitrogen + factor * byFactor[column] + more;
        }
    }
}
