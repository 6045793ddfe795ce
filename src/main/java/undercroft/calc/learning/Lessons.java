package undercroft.calc.learning;

import java.util.List;
import java.util.Optional;

/**
 * What earlier batches teach about one. A batch whose own readings are far likelier under the general prior than under what the
 * others taught is unlike them: it is told by the general prior, and teaches nothing.
 *
 * @param earlier summaries of the batches that teach, the oldest first
 * @param next with what the batch is made that is asked about
 */
public record Lessons(List<BatchSummary> earlier, BatchKeys next) {
    /** Below this, what the others taught is not used (assumed). */
    public static final double LEAST_EVIDENCE_RATIO = 0.1;

    /** How many of the newest teach; what is older counts next to nothing. */
    public static final int MOST_TEACHERS = 24;

    public Lessons {
        earlier = newest(earlier);
    }

    /** Those of summaries, the oldest first, that still teach. */
    public static List<BatchSummary> newest(List<BatchSummary> all) {
        return List.copyOf(all.subList(Math.max(0, all.size() - MOST_TEACHERS), all.size()));
    }

    public boolean isEmpty() {
        return earlier.isEmpty();
    }

    /** The batch's prior; empty where nothing was learned. */
    public Optional<LearnedPrior> prior() {
        return isEmpty()
                ? Optional.empty()
                : Optional.of(Brewer.of(earlier, next).prior(next).withGeneral());
    }

    /** The brewer's part alone, for saying what was learned; empty where nothing was. */
    public Optional<LearnedPrior> brewersPart() {
        return isEmpty()
                ? Optional.empty()
                : Optional.of(Brewer.of(earlier, next).ownPart(next));
    }

    /** How much likelier a batch's readings are by what the others taught than without; 1 where they taught nothing. */
    public double evidenceRatio(BatchSummary own) {
        return isEmpty() ? 1 : Brewer.of(earlier, own.keys()).prior(own.keys()).evidenceRatio(own.likelihood());
    }

    /** Whether a batch's own readings speak against what the others taught. */
    public boolean isUnlike(BatchSummary own) {
        return evidenceRatio(own) < LEAST_EVIDENCE_RATIO;
    }

    /**
     * The same from a forecast that began with {@link #prior}, whose general share is taken out.
     *
     * @param mixedRatio how much likelier the readings were under {@link #prior} than under the general prior
     */
    public static boolean isUnlike(double mixedRatio) {
        double learnedRatio = (mixedRatio - LearnedPrior.GENERAL_SHARE) / (1 - LearnedPrior.GENERAL_SHARE);
        return learnedRatio < LEAST_EVIDENCE_RATIO;
    }

    /** How many readings taught it. */
    public int readings() {
        return earlier.stream().mapToInt(BatchSummary::readings).sum();
    }
}
