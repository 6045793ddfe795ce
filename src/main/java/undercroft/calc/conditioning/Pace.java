package undercroft.calc.conditioning;

import java.util.Arrays;
import undercroft.calc.learning.LearnedPrior;
import undercroft.calc.learning.Trait;
import undercroft.calc.numeric.QuasiNormals;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.quantity.Interval;

/** How much faster than usual a brewer's batches ferment their priming sugar. */
public final class Pace {
    private static final int POINTS = 512;

    private Pace() {}

    /**
     * The usual days to 95 % of the gas at 21 °C over the brewer's own, 5, 50 and 95 %: 2 is twice as fast.
     *
     * @param brewersPart what earlier batches have in common, without what one batch does differently from another
     */
    public static Interval timesAsFast(Refermentation beer, LearnedPrior brewersPart) {
        double[][] deviates = QuasiNormals.points(POINTS, Trait.COUNT);
        double[][] members = new double[POINTS + 1][];
        for (int i = 0; i < POINTS; i++) {
            brewersPart.shape(i, deviates[i]);
            members[i] = MemberPrior.ofClock(deviates[i]);
        }
        members[POINTS] = new double[EnsembleParameters.DIMENSIONS];
        EnsembleParameters made = EnsembleParameters.of(beer, members, members.length);
        double usual = Trajectory.daysAtReference(made, POINTS);
        double[] faster = new double[POINTS];
        double[] alike = new double[POINTS];
        Arrays.fill(alike, 1.0 / POINTS);
        for (int i = 0; i < POINTS; i++) {
            faster[i] = Double.isInfinite(usual) ? 1 : usual / Trajectory.daysAtReference(made, i);
        }
        return new WeightedQuantiles(alike).interval(faster);
    }
}
