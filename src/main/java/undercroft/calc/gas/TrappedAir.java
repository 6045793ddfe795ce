package undercroft.calc.gas;

import undercroft.catalogue.FillingMethod;

/**
 * How much air a bottle was capped with, and how much of it stays above the beer, as two independent distributions told by
 * their quantiles, so that an ensemble can draw them. All figures are assumptions; what air is capped in adds about half a
 * bar to a bottle's pressure for as long as it stands.
 *
 * <p>An unpurged headspace is air; the yeast takes its oxygen, the fifth part of it, sooner or later. Foam that stands in
 * the neck when the cap goes on has driven most of the air out. Splashed beer took nitrogen up while it was filled, so that
 * less of the headspace's can follow.
 *
 * @param foamedShare chance that the bottles were capped on foam, 0 to 1
 * @param mostUnderFoam most air that stays in a headspace capped on foam, 0 to 0.79 of it
 * @param leastTrapped smallest share of the air that stays undissolved, 0 to 1
 */
public record TrappedAir(double foamedShare, double mostUnderFoam, double leastTrapped) {
    private static final double MOST_UNDER_FOAM = 0.35;
    private static final double SPLASHED_LEAST = 0.5;

    /** Nobody said how the bottles were filled: three in twenty were capped on foam. */
    public static final TrappedAir NOT_TOLD = new TrappedAir(0.15, MOST_UNDER_FOAM, 0);

    /** No air at all: the headspace was filled with carbon dioxide, or squeezed away. */
    public static final TrappedAir NONE = new TrappedAir(1, 0, 0);

    /** A headspace of air of which nothing dissolves. */
    public static final TrappedAir ALL_KEPT = new TrappedAir(0, MOST_UNDER_FOAM, 1);

    public TrappedAir {
        Require.within("foamedShare", foamedShare, 0, 1);
        Require.within("mostUnderFoam", mostUnderFoam, 0, DissolvedAir.NITROGEN_SHARE);
        Require.within("leastTrapped", leastTrapped, 0, 1);
    }

    /** What is to be expected of a way of filling. */
    public static TrappedAir of(FillingMethod method) {
        return switch (method) {
            case FOAM_CAPPED -> new TrappedAir(1, MOST_UNDER_FOAM, 0);
            case CAREFUL -> new TrappedAir(0, MOST_UNDER_FOAM, 0);
            case SPLASHED -> new TrappedAir(0, MOST_UNDER_FOAM, SPLASHED_LEAST);
            case NOT_TOLD -> NOT_TOLD;
        };
    }

    /**
     * The {@code airAmount} of {@link ClosedBottle#at} at a quantile: 0 to 0.35 under foam, else from 0.79 (all oxygen
     * taken) to 1, each evenly.
     *
     * @param share 0 to 1
     * @return 0 to 1, rising with {@code share}
     */
    public double amountAt(double share) {
        Require.within("share", share, 0, 1);
        if (share < foamedShare) {
            return mostUnderFoam * share / foamedShare;
        }
        double rest = foamedShare < 1 ? (share - foamedShare) / (1 - foamedShare) : 0;
        return foamedShare < 1 ? DissolvedAir.NITROGEN_SHARE + (1 - DissolvedAir.NITROGEN_SHARE) * rest : mostUnderFoam;
    }

    /**
     * The {@code airTrapped} of {@link ClosedBottle#at} at a quantile: evenly from {@link #leastTrapped} to 1.
     *
     * @param share 0 to 1
     * @return 0 (all dissolves to equilibrium) to 1, rising with {@code share}
     */
    public double trappedAt(double share) {
        Require.within("share", share, 0, 1);
        return leastTrapped + (1 - leastTrapped) * share;
    }
}
