package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.List;

/** Judges readings against the model; the bounds are assumptions. */
final class Verdicts {
    /** Mean loss of log-likelihood against a perfect reading: 1.5 is about 1.8 standard deviations on every reading. */
    private static final double WORST_MEAN_LOSS = 1.5;

    /** Loss of one reading: 4 is about 3.7 standard deviations, or an answer in words with a chance below 2 %. */
    private static final double ODD_LOSS = 4;

    /** From this probability on the readings say that there was more to ferment, if they raised it. */
    private static final double HIDDEN_LIKELY = 0.5;

    private Verdicts() {}

    static ReadingsVerdict of(Refermentation beer, List<ReadingLikelihood> likelihoods, StrataUpdate update) {
        List<Observation> readings = new ArrayList<>();
        likelihoods.forEach(lot -> readings.addAll(lot.readings()));
        List<ImportanceSampler> strata = update.strata();
        double[] shares = update.shares();
        long measured = readings.stream()
                .filter(reading -> !(reading instanceof Observation.Bursts))
                .count();
        double leastLoss = Double.POSITIVE_INFINITY;
        double[] mean = new double[readings.size()];
        double squares = 0;
        for (int s = 0; s < shares.length; s++) {
            double[] weights = strata.get(s).weights();
            double[][] logs = strata.get(s).logs();
            for (int i = 0; i < weights.length; i++) {
                double loss = 0;
                for (int r = 0; r < logs.length; r++) {
                    if (!(readings.get(r) instanceof Observation.Bursts)) {
                        loss += (ReadingLikelihood.bestLog(readings.get(r)) - logs[r][i]) / measured;
                    }
                    mean[r] += shares[s] * weights[i] * logs[r][i];
                }
                leastLoss = Math.min(leastLoss, loss);
                squares += Math.pow(shares[s] * weights[i], 2);
            }
        }
        List<Observation> odd = new ArrayList<>();
        for (int r = 0; r < mean.length; r++) {
            boolean burst = readings.get(r) instanceof Observation.Bursts;
            if (!burst && ReadingLikelihood.bestLog(readings.get(r)) - mean[r] > ODD_LOSS) {
                odd.add(readings.get(r));
            }
        }
        ReadingsVerdict.Agreement agreement =
                leastLoss > WORST_MEAN_LOSS ? ReadingsVerdict.Agreement.DISAGREES : ReadingsVerdict.Agreement.AGREES;
        double hidden = update.hiddenProbability();
        if (hidden >= HIDDEN_LIKELY && hidden > beer.hidden().probability()) {
            agreement = ReadingsVerdict.Agreement.NEEDS_EXTRA_EXTRACT;
        }
        return new ReadingsVerdict(agreement, odd, 1 / squares);
    }
}
