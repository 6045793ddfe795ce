package undercroft.calc.ageing;

import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.FillingMethod;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * How much of its life a beer has used: days at 20 °C that age it as much as the temperatures it had did.
 *
 * <pre>  days used = habit × ∫ exp[(Ea/R)(1/293.15 − 1/T)] dt </pre>
 *
 * <p>One activation energy with a range, 83.144 (60 to 110) kJ/mol: overall staling 62 kJ/mol (Li et al. 2015, J. Inst.
 * Brew., ratios at 40, 50, 60 °C), aldehydes 98 and furans 107 (Ferreira et al. 2022, LWT 154:112688, ratios 37 to 4 °C), loss
 * of bitter acids 108 (Malowicki and Shellhammer 2005, J. Agric. Food Chem. 53:4434). The median is the pharmacopoeia's
 * number and the cold half of the trade's "3-30-300" rule, whose two halves are not one Arrhenius law. The factor for how
 * the bottles were filled is an assumption.
 */
public final class ShelfLife {
    /** The temperature the budgets are told at, °C. */
    public static final double REFERENCE_CELSIUS = 20;

    /** Activation energy of ageing, kJ/mol. */
    public static final Interval KILOJOULES_PER_MOLE = Interval.of(60, MeanKineticTemperature.KILOJOULES_PER_MOLE, 110);

    /** What the activation energy rests on, for a person. */
    public static final String BASIS =
            "83 kJ/mol, between 60 and 110: staling tasted at 40 to 60 °C gives 62 (Li et al. 2015,"
                    + " J. Inst. Brew.), aldehydes 97, furans 107 and esters 65 (Ferreira et al. 2022, LWT 154:112688), loss of bitter"
                    + " acids 108 (Malowicki and Shellhammer 2005, J. Agric. Food Chem. 53:4434); the range is assumed";

    private static final double LAST_YEAR_SECONDS = 365 * Arrhenius.SECONDS_PER_DAY;
    private static final double[] ENERGIES = {
        KILOJOULES_PER_MOLE.median() / Arrhenius.GAS_CONSTANT,
        KILOJOULES_PER_MOLE.low() / Arrhenius.GAS_CONSTANT,
        KILOJOULES_PER_MOLE.high() / Arrhenius.GAS_CONSTANT
    };

    private ShelfLife() {}

    /** How fast a beer ages at a temperature in °C against 20 °C, dimensionless; low to high over the energies. */
    public static Interval rateAt(double celsius) {
        return spanning(
                Arrhenius.factor(ENERGIES[0], REFERENCE_CELSIUS, celsius),
                Arrhenius.factor(ENERGIES[1], REFERENCE_CELSIUS, celsius),
                Arrhenius.factor(ENERGIES[2], REFERENCE_CELSIUS, celsius));
    }

    /**
     * Life used in a stretch of time, days at 20 °C; only the part of the stretch that the track covers counts.
     *
     * @param bottle temperature of the bottles, °C
     */
    public static Interval daysUsed(Track bottle, long fromEpochSecond, long untilEpochSecond, FillingMethod habit) {
        return spanning(
                        used(bottle, fromEpochSecond, untilEpochSecond, ENERGIES[0]),
                        used(bottle, fromEpochSecond, untilEpochSecond, ENERGIES[1]),
                        used(bottle, fromEpochSecond, untilEpochSecond, ENERGIES[2]))
                .times(habit.ageingFactor());
    }

    /**
     * What a spell cost: life used in it less what would have been used had the bottles stayed at a baseline, days at
     * 20 °C. Negative for a cold spell, which gains days.
     *
     * @param baselineCelsius temperature without the spell, °C
     */
    public static Interval spellCost(
            Track bottle, long fromEpochSecond, long untilEpochSecond, double baselineCelsius, FillingMethod habit) {
        long from = Math.max(fromEpochSecond, bottle.timeAt(0));
        long until = Math.min(untilEpochSecond, bottle.timeAt(bottle.size() - 1));
        double days = Math.max(0, until - from) / Arrhenius.SECONDS_PER_DAY;
        double[] cost = new double[ENERGIES.length];
        for (int k = 0; k < cost.length; k++) {
            cost[k] = habit.ageingFactor()
                    * (used(bottle, from, until, ENERGIES[k])
                            - days * Arrhenius.factor(ENERGIES[k], REFERENCE_CELSIUS, baselineCelsius));
        }
        return spanning(cost[0], cost[1], cost[2]);
    }

    /** How long a kind of beer keeps, days at 20 °C. Common practice, no source. */
    public static Interval keepingBudget(BeerStyle kind) {
        return kind.keepingDaysAt20Celsius();
    }

    /**
     * When a budget is used up if the bottles age along a track from capping on. Past the track's end its last year goes
     * on with the mean rate it had. Budget and activation energy are taken as independent: their distances from the
     * median add in quadrature on each side.
     *
     * @param bottle temperature of the bottles, past and ahead, °C
     * @param cappedEpochSecond where ageing starts
     * @param budgetDays days at 20 °C, above 0, +∞ allowed
     */
    public static BestBefore bestBefore(
            Track bottle, long cappedEpochSecond, Interval budgetDays, FillingMethod habit) {
        if (!(budgetDays.low() > 0)) {
            throw new IllegalArgumentException("a budget is above 0 days");
        }
        double factor = habit.ageingFactor();
        double median = usedUp(bottle, cappedEpochSecond, budgetDays.median() / factor, ENERGIES[0]);
        double lowBudget = usedUp(bottle, cappedEpochSecond, budgetDays.low() / factor, ENERGIES[0]);
        double highBudget = usedUp(bottle, cappedEpochSecond, budgetDays.high() / factor, ENERGIES[0]);
        double lowEnergy = usedUp(bottle, cappedEpochSecond, budgetDays.median() / factor, ENERGIES[1]);
        double highEnergy = usedUp(bottle, cappedEpochSecond, budgetDays.median() / factor, ENERGIES[2]);
        double earliest = Math.min(median, Math.min(lowEnergy, highEnergy));
        double latest = Math.max(median, Math.max(lowEnergy, highEnergy));
        double early = median == Double.POSITIVE_INFINITY
                ? Math.min(lowBudget, earliest)
                : median - Math.hypot(median - lowBudget, median - earliest);
        double late =
                median == Double.POSITIVE_INFINITY ? median : median + Math.hypot(highBudget - median, latest - median);
        Interval instants = Interval.of(Math.max((double) cappedEpochSecond, early), median, late);
        return new BestBefore(instants, median > bottle.timeAt(bottle.size() - 1));
    }

    private static double used(Track bottle, long from, long until, double energyKelvin) {
        return Arrhenius.days(bottle, from, until, energyKelvin, REFERENCE_CELSIUS);
    }

    private static Interval spanning(double median, double one, double other) {
        double low = Math.min(median, Math.min(one, other));
        double high = Math.max(median, Math.max(one, other));
        return Interval.of(low, median, high);
    }

    private static double usedUp(Track bottle, long capped, double budgetDays, double energyKelvin) {
        long end = bottle.timeAt(bottle.size() - 1);
        double left = budgetDays * Arrhenius.SECONDS_PER_DAY;
        long from = Math.max(capped, bottle.timeAt(0));
        for (int i = bottle.indexAt(from); i + 1 < bottle.size(); i++) {
            long stepFrom = Math.max(from, bottle.timeAt(i));
            double celsius = (bottle.valueAt(i) + bottle.valueAt(i + 1)) / 2;
            double rate = Arrhenius.factor(energyKelvin, REFERENCE_CELSIUS, celsius);
            double step = rate * (bottle.timeAt(i + 1) - stepFrom);
            if (step >= left) {
                return stepFrom + left / rate;
            }
            left -= step;
        }
        return Math.max(from, end) + left / rateAfterTheEnd(bottle, end, energyKelvin);
    }

    private static double rateAfterTheEnd(Track bottle, long end, double energyKelvin) {
        long from = Math.max(bottle.timeAt(0), end - (long) LAST_YEAR_SECONDS);
        if (from >= end) {
            return Arrhenius.factor(energyKelvin, REFERENCE_CELSIUS, bottle.valueAt(0));
        }
        return used(bottle, from, end, energyKelvin) * Arrhenius.SECONDS_PER_DAY / (end - from);
    }
}
