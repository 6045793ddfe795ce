package undercroft.calc.conditioning;

import java.util.Arrays;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.series.Band;

/**
 * How one lot's bottles carbonate along a temperature track, member by member of an ensemble. Instants are counted in
 * the order they were asked for; times are epoch seconds, +∞ for "not within the track". Holds about 4 bytes for each
 * member and instant (8 with hidden extract).
 */
public final class ConditioningRun {
    private static final double SETTLED_GRAMS_PER_LITRE = 0.02;
    private static final double SETTLED_SHARE = 0.01;
    private static final int MILESTONES = 12;

    private final EnsembleParameters members;
    private final double[] weights;
    private final long[] instants;
    private final Trajectories trajectories;

    ConditioningRun(EnsembleParameters members, double[] weights, long[] instants, Trajectories trajectories) {
        this.members = members;
        this.weights = weights;
        this.instants = instants;
        this.trajectories = trajectories;
    }

    /** How many instants were asked for. */
    public int instants() {
        return instants.length;
    }

    /** The instant with an index, epoch seconds. */
    public long instantAt(int index) {
        return instants[index];
    }

    /** How many members the ensemble has. */
    public int members() {
        return members.size;
    }

    /** Carbon dioxide in the bottle per litre of beer, g/L: what was dissolved when capped and what was made since. */
    public double gramsPerLitre(int member, int instant) {
        return members.residual[member] + madeGramsPerLitre(member, instant);
    }

    /** Carbon dioxide made in the bottle since capping, g per litre of beer. */
    public double madeGramsPerLitre(int member, int instant) {
        return trajectories.made(member, instant);
    }

    /** Carbon dioxide that the priming sugar has made since capping, g per litre of beer: what one bottle has more of than another. */
    public double primedGramsPerLitre(int member, int instant) {
        return members.primed[member] * fractionDone(member, instant);
    }

    /** Share of the priming sugar, and of what was left over, taken up, 0 to 1; 1 when there was none. */
    public double fractionDone(int member, int instant) {
        return trajectories.fraction[instant * members.size + member];
    }

    /** Carbon dioxide when everything is gone that any yeast can reach, hidden extract included, g/L; strength is no bar. */
    public double finalGramsPerLitre(int member) {
        return members.finalGramsPerLitre(member);
    }

    /** Carbon dioxide of the priming sugar when all is gone, g/L. */
    public double primedGramsPerLitre(int member) {
        return members.primed[member];
    }

    /** When nine tenths of the sugar are gone, epoch seconds or +∞. */
    public double t90EpochSecond(int member) {
        return trajectories.t90[member];
    }

    /** When 95 % of the sugar are gone, epoch seconds or +∞. */
    public double t95EpochSecond(int member) {
        return trajectories.t95[member];
    }

    /** When the beer is fit to drink: 95 % of the sugar gone and the yeast's clean-up over; epoch seconds or +∞. */
    public double readyEpochSecond(int member) {
        return trajectories.ready[member];
    }

    /**
     * The first instant from which no more than a hundredth of a volume comes of the priming sugar until the last one, in all
     * but one in a hundred of the members: done or stuck for good. The number of instants when there is none. Hidden extract
     * may go on: see {@link #milestones}.
     */
    public int settledInstant() {
        int low = 0;
        int high = instants.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (isSettled(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private boolean isSettled(int instant) {
        int last = instants.length - 1;
        double working = 0;
        for (int m = 0; m < members.size; m++) {
            double still = fractionDone(m, last) - fractionDone(m, instant);
            if (members.priming[m] * still > SETTLED_GRAMS_PER_LITRE) {
                working += weights[m];
            }
        }
        return working < SETTLED_SHARE;
    }

    /**
     * Instants from the settled one to the last between which hidden extract, if there is any, may be taken to come evenly:
     * each a twelfth of it after the one before. Two of them, or one, when nothing is hidden; empty when nothing settles.
     */
    int[] milestones() {
        int from = settledInstant();
        int last = instants.length - 1;
        if (from > last) {
            return new int[0];
        }
        int[] found = new int[instants.length - from];
        found[0] = from;
        int count = 1;
        double step = Math.max(SETTLED_GRAMS_PER_LITRE / 10, (hiddenMade(last) - hiddenMade(from)) / MILESTONES);
        double next = hiddenMade(from) + step;
        for (int i = from + 1; i < last; i++) {
            if (hiddenMade(i) >= next) {
                found[count++] = i;
                next = hiddenMade(i) + step;
            }
        }
        if (last > from) {
            found[count++] = last;
        }
        return Arrays.copyOf(found, count);
    }

    /** Whether any member has hidden extract. */
    boolean hidesExtract() {
        return members.firstHidden < members.size;
    }

    private double hiddenMade(int instant) {
        double made = 0;
        double all = 0;
        for (int m = members.firstHidden; m < members.size; m++) {
            made += weights[m] * (trajectories.made(m, instant) - members.priming[m] * fractionDone(m, instant));
            all += weights[m];
        }
        return all > 0 ? made / all : 0;
    }

    /** Carbonation in volumes at every instant. */
    public Band carbonationVolumes() {
        double[] levels = {0.05, 0.25, 0.5, 0.75, 0.95};
        double[][] band = new double[levels.length][instants.length];
        double[] column = new double[members.size];
        double[] out = new double[levels.length];
        WeightedQuantiles quantiles = new WeightedQuantiles(weights);
        int[] milestones = milestones();
        int exact = milestones.length == 0 ? instants.length : milestones[0] + 1;
        for (int i = 0; i < exact; i++) {
            write(i, column, quantiles, levels, out, band);
        }
        for (int a = 1; a < milestones.length; a++) {
            int from = milestones[a - 1];
            int until = milestones[a];
            write(until, column, quantiles, levels, out, band);
            for (int i = from + 1; i < until; i++) {
                double share = (double) (instants[i] - instants[from]) / (instants[until] - instants[from]);
                for (double[] level : band) {
                    level[i] = level[from] + share * (level[until] - level[from]);
                }
            }
        }
        return Band.of(instants.clone(), band);
    }

    private void write(
            int instant, double[] column, WeightedQuantiles quantiles, double[] levels, double[] out, double[][] band) {
        volumes(instant, column);
        quantiles.of(column, levels, out);
        for (int k = 0; k < levels.length; k++) {
            band[k][instant] = out[k];
        }
    }

    /** Carbonation in volumes at one instant. */
    public Interval carbonationVolumesAt(int instant) {
        double[] column = new double[members.size];
        volumes(instant, column);
        return new WeightedQuantiles(weights).interval(column);
    }

    /** Carbonation in volumes when all is done, see {@link #finalGramsPerLitre}. */
    public Interval finalCarbonationVolumes() {
        double[] column = new double[members.size];
        for (int m = 0; m < members.size; m++) {
            column[m] = finalGramsPerLitre(m) / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
        }
        return new WeightedQuantiles(weights).interval(column);
    }

    /** Share of the sugar taken up at one instant. */
    public Interval fractionDoneAt(int instant) {
        double[] column = new double[members.size];
        for (int m = 0; m < members.size; m++) {
            column[m] = fractionDone(m, instant);
        }
        return new WeightedQuantiles(weights).interval(column);
    }

    /** When 90 % are done, epoch seconds, +∞ where it is not within the track. */
    public Interval t90EpochSeconds() {
        return new WeightedQuantiles(weights).interval(trajectories.t90);
    }

    /** When 95 % are done, epoch seconds, +∞ where it is not within the track. */
    public Interval t95EpochSeconds() {
        return new WeightedQuantiles(weights).interval(trajectories.t95);
    }

    /** When the beer is ready, epoch seconds, +∞ where it is not within the track. */
    public Interval readyEpochSeconds() {
        return new WeightedQuantiles(weights).interval(trajectories.ready);
    }

    /** Probability, 0 to 1, that the beer is ready at an instant or before. */
    public double probabilityReadyBy(long epochSecond) {
        double sum = 0;
        double total = 0;
        for (int m = 0; m < members.size; m++) {
            total += weights[m];
            if (trajectories.ready[m] <= epochSecond) {
                sum += weights[m];
            }
        }
        return Math.min(1, sum / total);
    }

    private void volumes(int instant, double[] column) {
        for (int m = 0; m < members.size; m++) {
            column[m] = gramsPerLitre(m, instant) / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
        }
    }
}
