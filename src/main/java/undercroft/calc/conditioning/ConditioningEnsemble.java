package undercroft.calc.conditioning;

import java.util.Arrays;
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
    private final Refermentation beer;
    private final int wantedMembers;
    private final Members members;
    private final double[] weights;

    ConditioningEnsemble(Refermentation beer, int wantedMembers, double[][] z, double[] weights) {
        this.beer = beer;
        this.wantedMembers = wantedMembers;
        this.members = Members.of(beer, z);
        this.weights = weights;
    }

    /**
     * The ensemble before any reading: every member weighs the same.
     *
     * @param members 1 to 65,536; a power of two is spread most evenly, 1,024 is plenty
     */
    public static ConditioningEnsemble of(Refermentation beer, int members) {
        if (members < 1 || members > 65_536) {
            throw new IllegalArgumentException("an ensemble has 1 to 65,536 members");
        }
        double[] weights = new double[members];
        Arrays.fill(weights, 1.0 / members);
        return new ConditioningEnsemble(beer, members, QuasiNormals.points(members, Members.DIMENSIONS), weights);
    }

    /** The one member whose constants are all at their medians. */
    public static ConditioningEnsemble medianOf(Refermentation beer) {
        return new ConditioningEnsemble(beer, 1, new double[1][Members.DIMENSIONS], new double[] {1});
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
        Courses courses = Courses.follow(members, steps, instants.length, beer.dextrinGramsPerLitre() > 0);
        return new ConditioningRun(members, weights, beer.dextrinGramsPerLitre(), instants.clone(), courses);
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

    Members memberConstants() {
        return members;
    }

    int wantedMembers() {
        return wantedMembers;
    }
}
