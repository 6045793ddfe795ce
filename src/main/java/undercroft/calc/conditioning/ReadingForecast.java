package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.List;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;

/**
 * What an ensemble expects of readings that it does not know, and what one of them would teach. What a member expects holds the
 * shared errors of instrument, bottle and person ({@link ReadingLikelihood}); a reading with a bottle, instrument or person that
 * the ensemble knows already shares its error with what it knows, so that the same gauge twice teaches less than two gauges.
 */
public final class ReadingForecast {
    private static final double[] FIVE_FIFTY_NINETY_FIVE = {0.05, 0.5, 0.95};

    /** Where the possible values of a reading are tried: the middles of five equally likely fifths. */
    private static final double[] FIFTHS = {0.1, 0.3, 0.5, 0.7, 0.9};

    /** What a gauge shows over what is there: standard deviation of the logarithm (assumed, as in the update). */
    private static final double GAUGE_SCALE = ConditioningEnsemble.GAUGE_SCALE;

    private ReadingForecast() {}

    /**
     * What readings were expected to show, whatever they did show.
     *
     * @param lot readings that the ensemble does not know; no bursts
     * @return one for each in order of time, 5, 50 and 95 %: bar gauge of a gauge and of a squeezed bottle, volumes of an opened
     *     one, points (0.001) of change since bottling day of a gravity
     */
    public static List<Interval> of(ConditioningEnsemble ensemble, LotReadings lot) {
        WeightedQuantiles quantiles = new WeightedQuantiles(ensemble.weights());
        double[] found = new double[3];
        List<Interval> all = new ArrayList<>();
        for (double[] each : expected(ensemble, lot)) {
            quantiles.of(each, FIVE_FIFTY_NINETY_FIVE, found);
            all.add(Interval.of(found[0], found[1], found[2]));
        }
        return all;
    }

    /**
     * How wide the 5 to 95 % range of the final carbonation would be after one more reading, on average: the members are weighed
     * anew for each word that may be said, by its chance, or for the middle of each fifth of what may be read.
     *
     * @param lot one reading; what it shows is not looked at
     * @return volumes of CO2
     */
    public static double volumesWideAfter(ConditioningEnsemble ensemble, LotReadings lot) {
        double[] expected = expected(ensemble, lot)[0];
        double sum = 0;
        double all = 0;
        for (Observation shown : outcomes(lot.readings().get(0), ensemble, expected)) {
            double[] after = ensemble.weights().clone();
            double chance = 0;
            for (int m = 0; m < after.length; m++) {
                after[m] *= Math.exp(ReadingLikelihood.log(shown, expected[m]));
                chance += after[m];
            }
            for (int m = 0; m < after.length; m++) {
                after[m] /= chance;
            }
            double share = isWord(shown) ? chance : 1;
            sum += share * wide(ensemble, after);
            all += share;
        }
        return sum / all;
    }

    private static boolean isWord(Observation reading) {
        return reading instanceof Observation.Squeeze || reading instanceof Observation.Opened;
    }

    /** What a reading may come out as: every word, or a number for each fifth. */
    private static List<Observation> outcomes(Observation reading, ConditioningEnsemble ensemble, double[] expected) {
        List<Observation> outcomes = new ArrayList<>();
        if (reading instanceof Observation.Squeeze squeeze) {
            for (BottleFeel each : BottleFeel.values()) {
                outcomes.add(new Observation.Squeeze(squeeze.epochSecond(), each, squeeze.hand()));
            }
            return outcomes;
        }
        if (reading instanceof Observation.Opened opened) {
            for (PerceivedCarbonation each : PerceivedCarbonation.values()) {
                outcomes.add(new Observation.Opened(opened.epochSecond(), each, opened.taster()));
            }
            return outcomes;
        }
        double[] values = new double[FIFTHS.length];
        new WeightedQuantiles(ensemble.weights()).of(expected, FIFTHS, values);
        for (double value : values) {
            outcomes.add(showing(reading, value));
        }
        return outcomes;
    }

    /** The same as it is now, volumes of CO2. */
    public static double volumesWide(ConditioningEnsemble ensemble) {
        return wide(ensemble, ensemble.weights());
    }

    private static double wide(ConditioningEnsemble ensemble, double[] weights) {
        EnsembleParameters members = ensemble.memberConstants();
        double[] volumes = new double[weights.length];
        for (int m = 0; m < volumes.length; m++) {
            volumes[m] = members.finalGramsPerLitre(m) / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
        }
        double[] found = new double[3];
        new WeightedQuantiles(weights).of(volumes, FIVE_FIFTY_NINETY_FIVE, found);
        return found[2] - found[0];
    }

    private static double[][] expected(ConditioningEnsemble ensemble, LotReadings lot) {
        Offsets offsets = Offsets.of(List.of(lot));
        return new ReadingLikelihood(lot, offsets, GAUGE_SCALE)
                .expected(ensemble.deviates(offsets), ensemble.memberConstants());
    }

    /** The same gauge or gravity with another outcome. */
    private static Observation showing(Observation reading, double value) {
        if (reading instanceof Observation.GaugePressure gauge) {
            return new Observation.GaugePressure(
                    gauge.epochSecond(),
                    Math.max(-1, Math.min(15, value)),
                    gauge.bottle(),
                    gauge.instrument(),
                    gauge.celsius());
        }
        Observation.ApparentGravity gravity = (Observation.ApparentGravity) reading;
        double specific = Math.max(0.980, Math.min(1.200, gravity.gravityAtBottling() + value / 1000));
        return new Observation.ApparentGravity(
                gravity.epochSecond(), specific, gravity.gravityAtBottling(), gravity.sugarWasIn());
    }
}
