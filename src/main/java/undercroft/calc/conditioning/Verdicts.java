package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Judges readings against the model; the bounds are assumptions. */
final class Verdicts {
    /** Mean loss of log-likelihood against a perfect reading: 1.5 is about 1.8 standard deviations on every reading. */
    private static final double WORST_MEAN_LOSS = 1.5;

    /** Loss of one reading: 4 is about 3.7 standard deviations, or an answer in words with a chance below 2 %. */
    private static final double ODD_LOSS = 4;

    private static final double STUDENT_5_AT_97_5 = 2.5706;

    private Verdicts() {}

    static ReadingsVerdict of(
            Refermentation beer, List<ReadingLikelihood> likelihoods, ImportanceSampler updating, double[] weights) {
        List<Observation> readings = new ArrayList<>();
        likelihoods.forEach(lot -> readings.addAll(lot.readings()));
        double[][] logs = updating.logs();
        double leastLoss = Double.POSITIVE_INFINITY;
        for (int i = 0; i < weights.length; i++) {
            double loss = 0;
            for (int r = 0; r < logs.length; r++) {
                loss += ReadingLikelihood.bestLog(readings.get(r)) - logs[r][i];
            }
            leastLoss = Math.min(leastLoss, loss / logs.length);
        }
        List<Observation> odd = new ArrayList<>();
        for (int r = 0; r < logs.length; r++) {
            double mean = 0;
            for (int i = 0; i < weights.length; i++) {
                mean += weights[i] * logs[r][i];
            }
            if (ReadingLikelihood.bestLog(readings.get(r)) - mean > ODD_LOSS) {
                odd.add(readings.get(r));
            }
        }
        ReadingsVerdict.Agreement agreement =
                leastLoss > WORST_MEAN_LOSS ? ReadingsVerdict.Agreement.DISAGREES : ReadingsVerdict.Agreement.AGREES;
        int dimensions = updating.points()[0].length;
        if (likelihoods.stream().anyMatch(lot -> aboveAllSugar(beer, lot, dimensions))) {
            agreement = ReadingsVerdict.Agreement.NEEDS_EXTRA_EXTRACT;
        }
        return new ReadingsVerdict(agreement, odd, ImportanceSampler.size(weights));
    }

    private static boolean aboveAllSugar(Refermentation beer, ReadingLikelihood likelihood, int dimensions) {
        double[][] middle = new double[1][dimensions];
        EnsembleParameters median = EnsembleParameters.of(beer, middle);
        double[][] z = null;
        EnsembleParameters members = null;
        for (Observation reading : likelihood.readings()) {
            double seen = ReadingLikelihood.towardsCeiling(reading);
            if (!(seen > likelihood.ceiling(reading, median, 0, middle[0]))) {
                continue;
            }
            if (z == null) {
                z = QuasiNormals.points(512, dimensions);
                members = EnsembleParameters.of(beer, z);
            }
            double[] ceilings = new double[z.length];
            for (int m = 0; m < z.length; m++) {
                ceilings[m] = likelihood.ceiling(reading, members, m, z[m]);
            }
            Arrays.sort(ceilings);
            double half = ceilings[z.length / 2];
            double model = ceilings[(int) (0.975 * z.length)] - half;
            double gauge = STUDENT_5_AT_97_5 * ReadingLikelihood.spreadOf(reading, half);
            if (seen > half + Math.hypot(model, gauge)) {
                return true;
            }
        }
        return false;
    }
}
