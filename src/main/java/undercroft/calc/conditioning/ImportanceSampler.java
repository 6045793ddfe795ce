package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import undercroft.calc.numeric.LogWeights;
import undercroft.calc.numeric.Proposal;

/**
 * Bayes' rule by importance sampling within one stratum: members without hidden extract, or those with it. The prior's quasi-random points are weighted by the likelihood of all readings; when
 * few of them carry the weight, a Student t is fitted to the cloud and drawn from, and all points, old and new, are
 * weighted against the mixture of everything that was drawn from (deterministic mixture, which keeps weights bounded:
 * Owen and Zhou 2000, J. Am. Stat. Assoc. 95:135; Cornuet et al. 2012, Scand. J. Stat. 39:798). A likelihood too sharp
 * for a first fit is tempered until the cloud is worth sixty points.
 */
final class ImportanceSampler {
    private static final int PRIOR_POINTS = 1024;
    private static final int ROUND_POINTS = 512;
    private static final int MOST_ROUNDS = 16;
    /** So many equally weighted points are enough. */
    static final double ENOUGH = 200;

    private static final double ENOUGH_TO_FIT = 60;

    /** Chosen once; the same readings give the same answer. */
    private static final int SEED = 20_260_104;

    private final List<ReadingLikelihood> likelihoods;
    private final int readings;
    private final Offsets offsets;
    private final MemberPrior prior;
    private final List<Proposal> proposals = new ArrayList<>();
    private double[][] points = new double[0][];
    private double[][] logs;
    private double[] logLikelihood = new double[0];
    private double[] logPrior = new double[0];
    private double[] logMixture = new double[0];

    private final Refermentation beer;
    private final boolean hidden;
    private final RandomGenerator random = new Well19937c(SEED);
    private double[] weights;

    /**
     * Draws and weighs the prior.
     *
     * @param hidden whether the stratum is the one with hidden extract
     */
    ImportanceSampler(
            Refermentation beer,
            boolean hidden,
            List<ReadingLikelihood> likelihoods,
            Offsets offsets,
            MemberPrior prior) {
        this.beer = beer;
        this.hidden = hidden;
        this.likelihoods = likelihoods;
        this.readings =
                likelihoods.stream().mapToInt(lot -> lot.readings().size()).sum();
        this.offsets = offsets;
        this.prior = prior;
        this.logs = new double[readings][0];
        add(prior.points(PRIOR_POINTS, offsets));
        weights = weights(1);
    }

    /** Whether another round of drawing is wanted and allowed. */
    boolean wantsRefining() {
        return proposals.size() < MOST_ROUNDS && size(weights) < ENOUGH;
    }

    /** Draws once more where the weight lies. */
    void refine() {
        Proposal proposal = Proposal.fittedTo(points, weightsWorthFitting(weights), offsets.dimensions());
        proposals.add(proposal);
        double[][] drawn = new double[ROUND_POINTS][];
        for (int i = 0; i < ROUND_POINTS; i++) {
            drawn[i] = proposal.draw(random);
        }
        add(drawn);
        weights = weights(1);
    }

    /** Weights that sum to 1, one for each point; read only. */
    double[] weights() {
        return weights;
    }

    /** Log of the probability of all readings in this stratum: the mean of prior × likelihood / mixture over the points. */
    double logEvidence() {
        return LogWeights.logSum(logWeights(1)) - Math.log(points.length);
    }

    EnsembleParameters members() {
        return EnsembleParameters.of(beer, points, hidden ? 0 : points.length);
    }

    double[][] points() {
        return points;
    }

    /** Log-likelihood of every reading (rows, lot by lot) at every point. */
    double[][] logs() {
        return logs;
    }

    static double size(double[] weights) {
        double squares = 0;
        for (double weight : weights) {
            squares += weight * weight;
        }
        return 1 / squares;
    }

    /**
     * Systematic resampling along a rank of the points, so that what goes with the rank keeps its spread: at most {@code wanted}
     * different points, each with a whole number of shares.
     *
     * @param rank one number for each point
     * @param into receives the points chosen
     * @return their weights
     */
    double[] thin(double[] rank, int wanted, List<double[]> into) {
        int before = into.size();
        Integer[] order = new Integer[weights.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> rank[i]));
        double[] shares = new double[wanted];
        double sum = 0;
        int taken = 0;
        for (int i : order) {
            sum += weights[i];
            int until = (int) Math.min(wanted, Math.floor(sum * wanted + 0.5));
            if (until > taken) {
                shares[into.size() - before] = (double) (until - taken) / wanted;
                into.add(points[i]);
                taken = until;
            }
        }
        return Arrays.copyOf(shares, into.size() - before);
    }

    private void add(double[][] drawn) {
        int before = points.length;
        int after = before + drawn.length;
        double[][] drawnLogs = new double[readings][];
        int row = 0;
        EnsembleParameters members = EnsembleParameters.of(beer, drawn, hidden ? 0 : drawn.length);
        for (ReadingLikelihood lot : likelihoods) {
            for (double[] reading : lot.of(drawn, members)) {
                drawnLogs[row++] = reading;
            }
        }
        points = Arrays.copyOf(points, after);
        logLikelihood = Arrays.copyOf(logLikelihood, after);
        logPrior = Arrays.copyOf(logPrior, after);
        System.arraycopy(drawn, 0, points, before, drawn.length);
        for (int r = 0; r < readings; r++) {
            logs[r] = Arrays.copyOf(logs[r], after);
            System.arraycopy(drawnLogs[r], 0, logs[r], before, drawn.length);
        }
        for (int i = before; i < after; i++) {
            for (int r = 0; r < readings; r++) {
                logLikelihood[i] += logs[r][i];
            }
            logPrior[i] = prior.logDensity(points[i], offsets);
        }
        mix();
    }

    private void mix() {
        logMixture = new double[points.length];
        double total = points.length;
        for (int i = 0; i < points.length; i++) {
            double density = PRIOR_POINTS / total * Math.exp(logPrior[i]);
            for (Proposal proposal : proposals) {
                density += ROUND_POINTS / total * Math.exp(proposal.logDensity(points[i]));
            }
            logMixture[i] = Math.log(density);
        }
    }

    private double[] weights(double power) {
        return LogWeights.normalised(logWeights(power));
    }

    private double[] logWeights(double power) {
        double[] logWeights = new double[points.length];
        for (int i = 0; i < logWeights.length; i++) {
            logWeights[i] = logPrior[i] + power * logLikelihood[i] - logMixture[i];
        }
        return logWeights;
    }

    private double[] weightsWorthFitting(double[] weights) {
        if (size(weights) >= ENOUGH_TO_FIT) {
            return weights;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < 12; i++) {
            double middle = (low + high) / 2;
            if (size(weights(middle)) >= ENOUGH_TO_FIT) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return weights(low);
    }
}
