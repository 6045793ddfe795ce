package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.List;
import undercroft.calc.learning.TraitLikelihood;

/**
 * Two strata of members weighed by all readings: the plain one, without hidden extract, and the one with it. Each has its own
 * points and refinement; their evidences say how likely hidden extract is. One cloud over both would look between them, where
 * nothing is.
 */
final class StrataUpdate {
    /** A stratum with less than this is not refined. */
    private static final double WORTH_REFINING = 0.001;

    private static final int FEWEST_SHARES = 128;
    private static final double LEAST_IF_UNFINISHED = 0.5;

    /** A batch that more likely holds hidden extract than so teaches nothing of its other constants (assumed). */
    private static final double MOST_HIDDEN_TO_LEARN_FROM = 0.2;

    private final Refermentation beer;
    private final List<ReadingLikelihood> likelihoods;
    private final Offsets offsets;
    private final MemberPrior memberPrior;
    private final ImportanceSampler plain;
    private final ImportanceSampler hiding;

    /** What earlier batches taught holds in the plain stratum alone: what nobody wrote down is not learned. */
    StrataUpdate(Refermentation beer, List<ReadingLikelihood> likelihoods, Offsets offsets, MemberPrior memberPrior) {
        this.beer = beer;
        this.likelihoods = likelihoods;
        this.offsets = offsets;
        this.memberPrior = memberPrior;
        double prior = beer.hidden().probability();
        plain = prior < 1 ? new ImportanceSampler(beer, false, likelihoods, offsets, memberPrior) : null;
        hiding = prior > 0 ? new ImportanceSampler(beer, true, likelihoods, offsets, MemberPrior.GENERAL) : null;
        boolean refined = true;
        while (refined) {
            double hidden = hiddenByEvidence();
            boolean once = refine(plain, 1 - hidden);
            refined = refine(hiding, hidden) || once;
        }
    }

    private static boolean refine(ImportanceSampler stratum, double share) {
        if (stratum == null || share <= WORTH_REFINING || !stratum.wantsRefining()) {
            return false;
        }
        stratum.refine();
        return true;
    }

    /** The probability of hidden extract: by the evidences, and no less than a half where the user calls the beer unfinished. */
    double hiddenProbability() {
        boolean unfinished = likelihoods.stream()
                .flatMap(lot -> lot.readings().stream())
                .anyMatch(reading ->
                        reading instanceof Observation.Bursts burst && burst.flaw() == Observation.Flaw.UNFINISHED);
        double hidden = hiddenByEvidence();
        return unfinished && hiding != null ? Math.max(LEAST_IF_UNFINISHED, hidden) : hidden;
    }

    private double hiddenByEvidence() {
        if (plain == null || hiding == null) {
            return plain == null ? 1 : 0;
        }
        double prior = beer.hidden().probability();
        double logOdds = hiding.logEvidence() - plain.logEvidence() + Math.log(prior / (1 - prior));
        return 1 / (1 + Math.exp(-logOdds));
    }

    /** Members that stand for both strata: shares by the root of each one's probability, with its exact weight in all. */
    ConditioningEnsemble ensemble(int wantedMembers, ReadingsVerdict verdict) {
        double hidden = hiddenProbability();
        List<double[]> kept = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        int forHidden = shares(wantedMembers, hidden);
        thin(plain, 1 - hidden, wantedMembers - forHidden, kept, weights);
        int firstHidden = kept.size();
        thin(hiding, hidden, forHidden, kept, weights);
        return new ConditioningEnsemble(
                beer,
                wantedMembers,
                kept.toArray(new double[0][]),
                offsets,
                firstHidden,
                weights.stream().mapToDouble(Double::doubleValue).toArray(),
                verdict,
                memberPrior,
                new Taught(traits(verdict), plain == null ? 0 : plain.logEvidence()));
    }

    /**
     * What the batch teaches of its traits; nothing where it may hold hidden extract, a bottle burst, its readings disagree with
     * the model, too few points tell of it, or it was itself told by what others taught.
     */
    private TraitLikelihood traits(ReadingsVerdict verdict) {
        boolean burst = likelihoods.stream()
                .flatMap(lot -> lot.readings().stream())
                .anyMatch(Observation.Bursts.class::isInstance);
        if (plain == null
                || burst
                || !memberPrior.isGeneral()
                || hiddenProbability() > MOST_HIDDEN_TO_LEARN_FROM
                || verdict.agreement() != ReadingsVerdict.Agreement.AGREES
                || ImportanceSampler.size(plain.weights()) < ImportanceSampler.ENOUGH) {
            return TraitLikelihood.NONE;
        }
        return MemberPrior.likelihood(plain.points(), plain.weights(), offsets);
    }

    private int shares(int wanted, double hidden) {
        if (plain == null || hiding == null) {
            return plain == null ? wanted : 0;
        }
        double root = Math.sqrt(hidden) / (Math.sqrt(hidden) + Math.sqrt(1 - hidden));
        int fewest = Math.min(FEWEST_SHARES, wanted / 2);
        return (int) Math.max(fewest, Math.min(wanted - fewest, Math.round(wanted * root)));
    }

    private static void thin(
            ImportanceSampler stratum, double share, int wanted, List<double[]> kept, List<Double> weights) {
        if (stratum == null || wanted == 0) {
            return;
        }
        for (double weight : stratum.thin(pace(stratum.members()), wanted, kept)) {
            weights.add(share * weight);
        }
    }

    private static double[] pace(EnsembleParameters drawn) {
        double[] pace = new double[drawn.size];
        for (int m = 0; m < pace.length; m++) {
            pace[m] = Trajectory.daysAtReference(drawn, m);
        }
        return pace;
    }

    /** The strata there are, the plain one first. */
    List<ImportanceSampler> strata() {
        List<ImportanceSampler> strata = new ArrayList<>();
        if (plain != null) {
            strata.add(plain);
        }
        if (hiding != null) {
            strata.add(hiding);
        }
        return strata;
    }

    /** How much each of {@link #strata} counts, together 1. */
    double[] shares() {
        double hidden = hiddenProbability();
        return plain == null || hiding == null ? new double[] {1} : new double[] {1 - hidden, hidden};
    }
}
