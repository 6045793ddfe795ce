package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.calc.learning.LearnedPrior;
import undercroft.calc.learning.TraitLikelihood;
import undercroft.calc.numeric.QuasiNormals;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.series.Track;

/**
 * What is known about how a batch will carbonate, as a few hundred equally possible beers: each member is one set of the
 * model's uncertain constants. Made from a quasi-random sequence, so the same input gives the same answer. Immutable.
 *
 * <p>The constants and their spreads are assumptions calibrated on practice: unfiltered ale at room temperature is ready
 * after two weeks. A member also says how its bottles deviate in what only pressure and temperature see: how well the
 * beer holds gas, how much air was capped in and stays in the headspace, how far the thermometer is off.
 */
public final class ConditioningEnsemble {
    private static final double[] COLD_AND_WARM = {5, 25};

    /** What a gauge shows over what is there: standard deviation of the logarithm, shared by all its readings (assumed). */
    static final double GAUGE_SCALE = 0.05;

    private final Refermentation beer;
    private final int wantedMembers;
    private final EnsembleParameters members;
    private final double[][] deviates;
    private final Offsets offsets;
    private final double[] weights;
    private final ReadingsVerdict verdict;
    private final MemberPrior prior;
    private final Taught taught;

    /** Of somebody with no history; {@code offsets} says which deviates beyond a member's own belong to what was read with. */
    ConditioningEnsemble(
            Refermentation beer,
            int wantedMembers,
            double[][] z,
            Offsets offsets,
            int firstHidden,
            double[] weights,
            ReadingsVerdict verdict) {
        this(beer, wantedMembers, z, offsets, firstHidden, weights, verdict, MemberPrior.GENERAL, Taught.NOTHING);
    }

    ConditioningEnsemble(
            Refermentation beer,
            int wantedMembers,
            double[][] z,
            Offsets offsets,
            int firstHidden,
            double[] weights,
            ReadingsVerdict verdict,
            MemberPrior prior,
            Taught taught) {
        this.beer = beer;
        this.wantedMembers = wantedMembers;
        this.members = EnsembleParameters.of(beer, z, firstHidden);
        this.deviates = z;
        this.offsets = offsets;
        this.weights = weights;
        this.verdict = verdict;
        this.prior = prior;
        this.taught = taught;
    }

    /**
     * The ensemble before any reading. Where hidden extract is possible but not certain half the members have it, whatever its
     * probability, so that what only it can do is told as finely as the rest; within each half every member weighs the same.
     *
     * @param members 1 to 65,536; a power of two is spread most evenly, 1,024 is plenty
     */
    public static ConditioningEnsemble of(Refermentation beer, int members) {
        return of(beer, members, MemberPrior.GENERAL);
    }

    /** The same where earlier batches taught something of this one. */
    public static ConditioningEnsemble of(Refermentation beer, int members, LearnedPrior learned) {
        return of(beer, members, MemberPrior.of(learned));
    }

    private static ConditioningEnsemble of(Refermentation beer, int members, MemberPrior prior) {
        if (members < 1 || members > 65_536) {
            throw new IllegalArgumentException("an ensemble has 1 to 65,536 members");
        }
        double hidden = beer.hidden().probability();
        int plain = hidden <= 0 ? members : hidden >= 1 ? 0 : Math.max(1, members / 2);
        double[] weights = new double[members];
        Arrays.fill(weights, 0, plain, plain == members ? 1.0 / members : (1 - hidden) / plain);
        Arrays.fill(weights, plain, members, hidden / Math.max(1, members - plain));
        return new ConditioningEnsemble(
                beer,
                members,
                points(members, plain, prior),
                Offsets.NONE,
                plain,
                weights,
                unread(members),
                prior,
                Taught.NOTHING);
    }

    /** Members with hidden extract know nothing of what other batches taught. */
    private static double[][] points(int members, int plain, MemberPrior prior) {
        double[][] general = MemberPrior.GENERAL.points(members, Offsets.NONE);
        if (prior.isGeneral()) {
            return general;
        }
        double[][] points = general.clone();
        System.arraycopy(prior.points(members, Offsets.NONE), 0, points, 0, plain);
        return points;
    }

    /** The one member whose constants are all at their medians, without hidden extract. */
    public static ConditioningEnsemble medianOf(Refermentation beer) {
        return new ConditioningEnsemble(
                beer, 1, new double[1][EnsembleParameters.DIMENSIONS], Offsets.NONE, 1, new double[] {1}, unread(1));
    }

    /**
     * The ensemble that knows all readings of the batch, if they were all taken on bottles with one history.
     *
     * @param readings see {@link LotReadings}; none gives the prior
     */
    public ConditioningEnsemble updated(
            List<? extends Observation> readings, Track bottle, long cappedEpochSecond, PressureModel pressure) {
        return updated(
                readings.isEmpty()
                        ? List.of()
                        : List.of(new LotReadings(List.copyOf(readings), bottle, cappedEpochSecond, pressure)));
    }

    /**
     * The ensemble that knows all readings of the batch. It is always made anew from the prior, so give every reading
     * each time; readings this ensemble already knew do not count on.
     *
     * @param lots readings by lot, in any order; none gives the prior. A gauge bottle's number belongs to one
     *     lot only
     * @return at most as many members as this ensemble was asked for, with unequal weights, and a verdict
     */
    public ConditioningEnsemble updated(List<LotReadings> lots) {
        ConditioningEnsemble informed = updated(lots, GAUGE_SCALE);
        if (lots.stream().noneMatch(LotReadings::hasBursts)) {
            return informed;
        }
        // Bottles that did not burst must not make a burst good news: where they would, only the burst is heard, which
        // can but raise; and where even that does not, what was known before it holds.
        ConditioningEnsemble before = updated(
                lots.stream()
                        .map(LotReadings::withoutBursts)
                        .flatMap(Optional::stream)
                        .toList(),
                GAUGE_SCALE);
        if (!informed.isLowerThan(before, lots)) {
            return informed;
        }
        ConditioningEnsemble raised =
                updated(lots.stream().map(LotReadings::withoutSurvivors).toList(), GAUGE_SCALE);
        return raised.isLowerThan(before, lots) ? before : raised;
    }

    /** Whether the 95 % pressure, all fermented, of any lot with a burst is lower at 5 or at 25 °C than in another ensemble. */
    private boolean isLowerThan(ConditioningEnsemble other, List<LotReadings> lots) {
        return lots.stream()
                .filter(LotReadings::hasBursts)
                .anyMatch(lot -> Arrays.stream(COLD_AND_WARM)
                        .anyMatch(celsius -> highestBar(lot, celsius) < other.highestBar(lot, celsius)));
    }

    private double highestBar(LotReadings lot, double celsius) {
        double[] bars = new double[members.size];
        for (int m = 0; m < bars.length; m++) {
            bars[m] = lot.pressure()
                    .gaugeBar(
                            celsius,
                            members.finalGramsPerLitre(m),
                            members.beerFactor[m],
                            members.airAmount[m],
                            members.airTrapped[m]);
        }
        double[] out = new double[1];
        new WeightedQuantiles(weights).of(bars, new double[] {0.95}, out);
        return out[0];
    }

    /** As {@link #updated(List)}, for gauges whose own error has another standard deviation, as a share of the pressure. */
    ConditioningEnsemble updated(List<LotReadings> lots, double gaugeScale) {
        if (lots.isEmpty()) {
            return of(beer, wantedMembers, prior);
        }
        List<LotReadings> inOrder = new ArrayList<>(lots);
        inOrder.sort(Comparator.comparing(lot -> lot.readings().toString()));
        Offsets offsets = Offsets.of(inOrder);
        List<ReadingLikelihood> likelihoods = inOrder.stream()
                .map(lot -> new ReadingLikelihood(lot, offsets, gaugeScale))
                .toList();
        StrataUpdate update = new StrataUpdate(beer, likelihoods, offsets, prior);
        return update.ensemble(wantedMembers, Verdicts.of(beer, likelihoods, update));
    }

    /**
     * Follows every member from capping along a temperature track.
     *
     * @param bottle temperature of the beer in the bottle, °C, with its standard deviation; must not begin after capping.
     *     The deviation is common to the whole track: a member is off by the same number of deviations throughout
     * @param cappedEpochSecond when the bottles were closed
     * @param instants rising epoch seconds at which the course is wanted; before capping nothing has happened, after
     *     the track's last grid point the course stands still
     */
    public ConditioningRun run(Track bottle, long cappedEpochSecond, long[] instants) {
        Steps steps = Steps.of(bottle, cappedEpochSecond, instants, Long.MAX_VALUE);
        Trajectories trajectories = Trajectories.follow(members, steps, instants.length);
        return new ConditioningRun(members, weights, instants.clone(), trajectories);
    }

    /** How the readings and the model get on. */
    public ReadingsVerdict verdict() {
        return verdict;
    }

    /**
     * What the readings teach of the constants that later batches may share. Nothing without readings, nor from a batch that is
     * itself told by what others taught: make it with the general prior.
     */
    public TraitLikelihood traits() {
        return taught.traits();
    }

    /**
     * How much more probable the readings were by what earlier batches taught than without; above 0, and 1 without readings.
     *
     * @param alone the same batch with the same readings, made with the general prior
     */
    public double evidenceRatio(ConditioningEnsemble alone) {
        return Math.exp(taught.logEvidence() - alone.taught.logEvidence());
    }

    /** What explains the batch, by the weight of its members. */
    public Explanation explanation() {
        double moreSugar = 0;
        double hidden = 0;
        double all = 0;
        for (int m = 0; m < members.size; m++) {
            all += weights[m];
            if (m >= members.firstHidden) {
                hidden += weights[m];
            } else if (members.doseFactor(m) >= Explanation.MORE_SUGAR_FACTOR) {
                moreSugar += weights[m];
            }
        }
        return new Explanation(Math.max(0, (all - moreSugar - hidden) / all), moreSugar / all, hidden / all);
    }

    /** What the ensemble was made from. */
    public Refermentation refermentation() {
        return beer;
    }

    /** How many members there are. */
    public int size() {
        return members.size;
    }

    /** How much a member counts; all together 1. */
    public double weight(int member) {
        return weights[member];
    }

    /** How well a member's beer holds the gas against water, dimensionless. */
    public double beerFactor(int member) {
        return members.beerFactor[member];
    }

    /** How much of the headspace's air stays there instead of dissolving, 0 (equilibrium) to 1 (none dissolves). */
    public double airTrapped(int member) {
        return members.airTrapped[member];
    }

    /** How much of the air capped in is left, 0.79 (yeast took the oxygen) to 1. */
    public double airAmount(int member) {
        return members.airAmount[member];
    }

    /** How many standard deviations of the track a member's bottles are warmer than its values. */
    public double temperatureZ(int member) {
        return members.temperatureZ[member];
    }

    EnsembleParameters memberConstants() {
        return members;
    }

    double[] weights() {
        return weights;
    }

    /**
     * The members' deviates as {@code wanted} numbers what is read with: those that this ensemble knows, and independent ones
     * for bottles, instruments and people that it does not.
     */
    double[][] deviates(Offsets wanted) {
        double[][] all = QuasiNormals.points(members.size, wanted.dimensions());
        for (int m = 0; m < all.length; m++) {
            System.arraycopy(deviates[m], 0, all[m], 0, EnsembleParameters.DIMENSIONS);
            wanted.copyKnown(offsets, deviates[m], all[m]);
        }
        return all;
    }

    private static ReadingsVerdict unread(int members) {
        return new ReadingsVerdict(ReadingsVerdict.Agreement.NO_READINGS, List.of(), members);
    }
}
