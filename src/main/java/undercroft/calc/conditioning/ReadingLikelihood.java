package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import undercroft.calc.numeric.Spread;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * What each of many members expects of a lot's readings, and how probable that makes them ({@link ReadingLaw}).
 *
 * <p>Readings of one bottle share its dose, those of one instrument its error, words of one person his or her scale, and all
 * bottles of the batch the air capped in: without that they would count as independent and promise far too much. Figures
 * without a source are assumptions. Bursts have a likelihood of their own, {@link BurstLikelihood}.
 */
final class ReadingLikelihood {
    private static final Interval GAUGE_BOTTLE_FACTOR = Interval.of(0.92, 1, 1.087);
    private static final double TASTER_VOLUMES = 0.2;
    private static final double HAND_BAR = 0.1;

    /** Gravity points, 0.001, that a gram of hexose weighs in a litre, and that its loss and its alcohol take away. */
    private static final double POINTS_OF_SUGAR = 0.38;

    private static final double POINTS_PER_GRAM_FERMENTED = 0.47;

    private final Offsets offsets;
    private final double gaugeScale;
    private final List<Observation> readings;
    private final PressureModel pressure;
    private final Steps steps;
    private final double[] celsius;
    private final double[] spread;
    private final BurstLikelihood bursts;

    /**
     * For the readings of a lot.
     *
     * @param gaugeScale standard deviation of the logarithm of what a gauge shows over what is there
     */
    ReadingLikelihood(LotReadings lot, Offsets offsets, double gaugeScale) {
        this.offsets = offsets;
        this.gaugeScale = gaugeScale;
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
        List<Observation.Bursts> burst = new ArrayList<>();
        for (Observation reading : readings) {
            if (reading instanceof Observation.Bursts some) {
                burst.add(some);
            }
        }
        this.bursts = burst.isEmpty() ? null : new BurstLikelihood(lot, burst);
    }

    List<Observation> readings() {
        return readings;
    }

    /** Log-likelihood of each reading (rows) for each member (columns). */
    double[][] of(double[][] z, EnsembleParameters members) {
        double[][] burst = bursts == null ? new double[0][] : bursts.of(z, members);
        double[][] expected = expected(z, members);
        double[][] logs = new double[readings.size()][z.length];
        int bursts = 0;
        for (int r = 0; r < logs.length; r++) {
            Observation reading = readings.get(r);
            if (reading instanceof Observation.Bursts) {
                logs[r] = burst[bursts++];
                continue;
            }
            for (int m = 0; m < z.length; m++) {
                logs[r][m] = log(reading, expected[r][m]);
                if (Double.isNaN(logs[r][m])) {
                    throw new IllegalArgumentException("the pressure model gave no number for " + reading);
                }
            }
        }
        return logs;
    }

    /**
     * What each member (columns) expects of each reading (rows), its offsets included: bar of a gauge and of a squeezed bottle,
     * volumes of an opened one, points of change of a gravity. Zeros for bursts.
     */
    double[][] expected(double[][] z, EnsembleParameters members) {
        Trajectories trajectories = Trajectories.follow(members, steps, readings.size());
        double[][] expected = new double[readings.size()][z.length];
        for (int r = 0; r < expected.length; r++) {
            for (int m = 0; m < z.length; m++) {
                expected[r][m] = expected(readings.get(r), r, members, m, z[m], trajectories.made(m, r));
            }
        }
        return expected;
    }

    private double expected(Observation reading, int r, EnsembleParameters members, int m, double[] z, double made) {
        double grams = members.residual[m] + made;
        double warmer = z[EnsembleParameters.TEMPERATURE] * spread[r];
        if (reading instanceof Observation.GaugePressure gauge) {
            double own = Spread.at(GAUGE_BOTTLE_FACTOR, z[offsets.bottle(gauge.bottle())]);
            double bar = pressure.gaugeBar(
                    gauge.celsius() + warmer,
                    grams * own,
                    members.beerFactor[m],
                    members.airAmount[m],
                    members.airTrapped[m]);
            return bar * Math.exp(gaugeScale * z[offsets.instrument(gauge.instrument())]);
        }
        if (reading instanceof Observation.Squeeze squeeze) {
            double bar = pressure.gaugeBar(celsius[r] + warmer, grams, members.beerFactor[m], 0, 0);
            return bar + HAND_BAR * z[offsets.hand(squeeze.hand())];
        }
        if (reading instanceof Observation.Opened opened) {
            return grams / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME
                    + TASTER_VOLUMES * z[offsets.taster(opened.taster())];
        }
        if (reading instanceof Observation.ApparentGravity gravity) {
            double sugar = gravity.sugarWasIn() ? 0 : POINTS_OF_SUGAR * members.primed[m];
            return (sugar - POINTS_PER_GRAM_FERMENTED * made) / EnsembleParameters.GRAMS_PER_GRAM_HEXOSE;
        }
        return 0;
    }

    /** The log-likelihood of a reading that is not a burst where a member expects a value. */
    static double log(Observation reading, double expected) {
        if (reading instanceof Observation.GaugePressure gauge) {
            return ReadingLaw.logGauge(gauge.gaugeBar(), expected);
        }
        if (reading instanceof Observation.Squeeze squeeze) {
            return ReadingLaw.logWord(
                    expected,
                    ReadingLaw.LOGIT_BAR,
                    squeeze.feel().fromBar(),
                    squeeze.feel().untilBar());
        }
        if (reading instanceof Observation.Opened opened) {
            PerceivedCarbonation word = opened.perceivedCarbonation();
            return ReadingLaw.logWord(expected, ReadingLaw.LOGIT_VOLUMES, word.fromVolumes(), word.untilVolumes());
        }
        return ReadingLaw.logGravity(points((Observation.ApparentGravity) reading), expected);
    }

    /** The log-likelihood of a reading that falls exactly where it is expected, to measure others against. */
    static double bestLog(Observation reading) {
        if (reading instanceof Observation.GaugePressure gauge) {
            return ReadingLaw.logGauge(gauge.gaugeBar(), Math.min(ReadingLaw.MOST_BAR, gauge.gaugeBar()));
        }
        return reading instanceof Observation.ApparentGravity gravity
                ? ReadingLaw.logGravity(points(gravity), Math.max(-ReadingLaw.MOST_FALL, points(gravity)))
                : 0;
    }

    /** Change of gravity since bottling day, points; falls are negative. */
    static double points(Observation.ApparentGravity gravity) {
        return (gravity.specificGravity() - gravity.gravityAtBottling()) * 1000;
    }
}
