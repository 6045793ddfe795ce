package undercroft.calc.conditioning;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.special.Gamma;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * How probable a batch's readings are for each of many members. Figures without a source are assumptions.
 *
 * <p>A gauge is read to Student's t with 5 degrees of freedom about the bottle's pressure; all readings of one gauge
 * bottle share one factor on its carbon dioxide, and all gauge bottles of the batch share the air capped in. Without
 * those the readings would count as independent and promise far too much. Words are ordered logits with a share of slips.
 */
final class ReadingLikelihood {
    private static final double FREEDOM = 5;
    private static final double LOG_T_CONSTANT =
            Gamma.logGamma((FREEDOM + 1) / 2) - Gamma.logGamma(FREEDOM / 2) - 0.5 * Math.log(FREEDOM * Math.PI);

    /** One reading in fifty is a slip of the pen and says nothing. */
    private static final double SLIP = 0.02;

    /** Words to choose from, for a squeezed and for an opened bottle. */
    private static final int WORDS = 5;

    private static final Interval GAUGE_BOTTLE_FACTOR = Interval.of(0.92, 1, 1.087);
    private static final double LOGIT_BAR = 0.15;
    private static final double LOGIT_VOLUMES = 0.25;

    /** Gravity points, 0.001, that a gram of hexose weighs in a litre, and that its loss and its alcohol take away. */
    private static final double POINTS_OF_SUGAR = 0.38;

    private static final double POINTS_PER_GRAM_FERMENTED = 0.47;
    private static final double POINTS_SPREAD = 1.0;

    private final Refermentation beer;
    private final List<Observation> readings;
    private final PressureModel pressure;
    private final Steps steps;
    private final double[] celsius;
    private final double[] spread;

    ReadingLikelihood(Refermentation beer, LotReadings lot) {
        this.beer = beer;
        this.readings = lot.readings();
        this.pressure = lot.pressure();
        Track bottle = lot.bottle();
        long[] instants = readings.stream().mapToLong(Observation::epochSecond).toArray();
        this.steps = Steps.of(bottle, lot.cappedEpochSecond(), instants, instants[instants.length - 1]);
        this.celsius = Arrays.stream(instants)
                .mapToDouble(t -> bottle.valueAt(bottle.indexAt(t)))
                .toArray();
        this.spread = Arrays.stream(instants)
                .mapToDouble(t -> bottle.spreadAt(bottle.indexAt(t)))
                .toArray();
    }

    List<Observation> readings() {
        return readings;
    }

    /** Log-likelihood of each reading (rows) for each member (columns). */
    double[][] of(double[][] z) {
        EnsembleParameters members = EnsembleParameters.of(beer, z);
        int count = readings.size();
        boolean dextrins = beer.dextrinGramsPerLitre() > 0;
        Trajectories trajectories = Trajectories.follow(members, steps, count, dextrins);
        double[][] logs = new double[count][z.length];
        for (int r = 0; r < count; r++) {
            Observation reading = readings.get(r);
            for (int m = 0; m < z.length; m++) {
                int at = r * z.length + m;
                double made = members.priming[m] * trajectories.fraction[at];
                if (dextrins) {
                    made += beer.dextrinGramsPerLitre() * trajectories.dextrinFraction[at];
                }
                logs[r][m] = logOf(reading, r, members, m, z[m], made);
                if (Double.isNaN(logs[r][m])) {
                    throw new IllegalArgumentException("the pressure model gave no number for " + reading);
                }
            }
        }
        return logs;
    }

    private double logOf(Observation reading, int r, EnsembleParameters members, int m, double[] z, double made) {
        double grams = members.residual[m] + made;
        if (reading instanceof Observation.GaugePressure gauge) {
            double factor = Spread.at(GAUGE_BOTTLE_FACTOR, z[EnsembleParameters.DIMENSIONS + gauge.bottle()]);
            double expected = gaugeBar(gauge.celsius(), grams * factor, members, m);
            return logStudent(gauge.gaugeBar() - expected, gaugeSpread(expected), 10);
        }
        if (reading instanceof Observation.Squeeze squeeze) {
            double warm = celsius[r] + z[EnsembleParameters.TEMPERATURE] * spread[r];
            double bar = pressure.gaugeBar(warm, grams, members.beerFactor[m], 0, 0);
            return logOrdered(
                    bar, LOGIT_BAR, squeeze.feel().fromBar(), squeeze.feel().untilBar());
        }
        if (reading instanceof Observation.Opened opened) {
            double volumes = grams / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
            PerceivedCarbonation word = opened.perceivedCarbonation();
            return logOrdered(volumes, LOGIT_VOLUMES, word.fromVolumes(), word.untilVolumes());
        }
        Observation.ApparentGravity gravity = (Observation.ApparentGravity) reading;
        return logStudent(points(gravity) - expectedPoints(gravity, members, m, made), POINTS_SPREAD, 40);
    }

    /** Where the model's ceiling lies for a reading that has one: all sugar gone. NaN for words. */
    double ceiling(Observation reading, EnsembleParameters members, int m, double[] z) {
        if (reading instanceof Observation.GaugePressure gauge) {
            double factor = Spread.at(GAUGE_BOTTLE_FACTOR, z[EnsembleParameters.DIMENSIONS + gauge.bottle()]);
            double grams = (members.residual[m] + members.priming[m] + beer.dextrinGramsPerLitre()) * factor;
            return gaugeBar(gauge.celsius(), grams, members, m);
        }
        if (reading instanceof Observation.ApparentGravity gravity) {
            // Counted downwards, so that more fermented is more, as with pressure.
            return -expectedPoints(gravity, members, m, members.priming[m] + beer.dextrinGramsPerLitre());
        }
        return Double.NaN;
    }

    /** The reading in the direction of its ceiling; NaN for words. */
    static double towardsCeiling(Observation reading) {
        if (reading instanceof Observation.GaugePressure gauge) {
            return gauge.gaugeBar();
        }
        return reading instanceof Observation.ApparentGravity gravity ? -points(gravity) : Double.NaN;
    }

    /** Standard deviation of the reading itself about what is expected. */
    static double spreadOf(Observation reading, double expected) {
        return reading instanceof Observation.GaugePressure ? gaugeSpread(expected) : POINTS_SPREAD;
    }

    /** The log-likelihood of a reading that falls exactly where it is expected, to measure others against. */
    static double bestLog(Observation reading) {
        if (reading instanceof Observation.GaugePressure gauge) {
            return logStudent(0, gaugeSpread(gauge.gaugeBar()), 10);
        }
        return reading instanceof Observation.ApparentGravity ? logStudent(0, POINTS_SPREAD, 40) : 0;
    }

    private double gaugeBar(double warm, double grams, EnsembleParameters members, int m) {
        return pressure.gaugeBar(warm, grams, members.beerFactor[m], members.airAmount[m], members.airTrapped[m]);
    }

    private static double gaugeSpread(double gaugeBar) {
        return Math.hypot(0.08, 0.04 * (Math.max(0, gaugeBar) + 1));
    }

    private static double points(Observation.ApparentGravity gravity) {
        return (gravity.specificGravity() - gravity.gravityAtBottling()) * 1000;
    }

    private double expectedPoints(Observation.ApparentGravity gravity, EnsembleParameters members, int m, double made) {
        double stirredIn = members.priming[m] - beer.extraGramsPerLitre();
        double sugar = gravity.sugarWasIn() ? 0 : POINTS_OF_SUGAR * stirredIn;
        return (sugar - POINTS_PER_GRAM_FERMENTED * made) / EnsembleParameters.GRAMS_PER_GRAM_HEXOSE;
    }

    private static double logStudent(double difference, double scale, double range) {
        double r = difference / scale;
        double log = LOG_T_CONSTANT - Math.log(scale) - (FREEDOM + 1) / 2 * Math.log1p(r * r / FREEDOM);
        return Math.log((1 - SLIP) * Math.exp(log) + SLIP / range);
    }

    private static double logOrdered(double value, double scale, double from, double until) {
        double chance = logistic((until - value) / scale) - logistic((from - value) / scale);
        return Math.log((1 - SLIP) * Math.max(0, chance) + SLIP / WORDS);
    }

    private static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }
}
