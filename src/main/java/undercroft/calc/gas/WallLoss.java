package undercroft.calc.gas;

import undercroft.catalogue.BottleType;
import undercroft.quantity.Interval;

/**
 * Carbon dioxide that leaves through a plastic wall. A new half-litre bottle of 0.35 mm loses of the order of 15 % in twelve
 * weeks at room temperature (from memory; it depends on weight, temperature and carbonation: Carrieri et al. 2012, J. Food
 * Eng. 108:570, abstract). Thicker and larger bottles lose less, by the wall and by the outside for each litre. Glass keeps
 * everything. What is lost is gone from pressure and taste, but no limit may lean on a loss: the high end loses nothing.
 */
public final class WallLoss {
    private static final double LEFT = 0.85;
    private static final double LEFT_DAYS = 84;
    private static final double MILLILITRES = 500;
    private static final double MILLIMETRES = 0.35;
    private static final double FASTEST = 2;

    private WallLoss() {}

    /**
     * The share of the carbon dioxide that is still in the bottle.
     *
     * @param days since capping, 0 or more
     * @return 5, 50, 95 %; exactly 1 for glass, and 1 at the high end for all
     * @throws IllegalArgumentException for days below 0 or without number
     */
    public static Interval keptShare(BottleType type, double days) {
        if (!(days >= 0 && days < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("days is " + days + ", not 0 or more");
        }
        if (type.isGlass()) {
            return Interval.exactly(1);
        }
        double perDay = -Math.log(LEFT)
                / LEFT_DAYS
                * Math.cbrt(MILLILITRES / type.fillMillilitres())
                * MILLIMETRES
                / type.wallMillimetres();
        return Interval.of(Math.exp(-FASTEST * perDay * days), Math.exp(-perDay * days), 1);
    }
}
