package undercroft.calc.extract;

import undercroft.quantity.Interval;

/**
 * How far the sugar in a batch may be off what was written down: volume and scale beside the spread of the sugar's own
 * yield, with a long tail for gross slips (a scale read wrong, sugar added twice). All figures are assumptions.
 *
 * @param deviation standard deviation of the logarithm of volume and scale together
 * @param tail what each standard deviation beyond {@link #TAIL_FROM} adds to the logarithm
 */
public record DoseSpread(double deviation, double tail) {
    /** Volume 3 %, scale 2 %; with the tail one batch in 150 has half as much again, one in 740 twice as much. */
    public static final DoseSpread USUAL = new DoseSpread(Math.hypot(0.03, 0.02), 0.5);

    /** Nothing but volume and scale: no gross slips. */
    public static final DoseSpread NO_SLIPS = new DoseSpread(USUAL.deviation, 0);

    /** From so many standard deviations on slips are gross. */
    public static final double TAIL_FROM = 1.9;

    public DoseSpread {
        if (!(deviation >= 0 && deviation < 1 && tail >= 0 && tail < 2)) {
            throw new IllegalArgumentException("no spread of a dose: " + deviation + ", " + tail);
        }
    }

    /**
     * Carbon dioxide the dose gives at a standard normal deviate, g/L; rising, and at 0 the median of the yield.
     *
     * @param yield carbon dioxide of the sugar as written down, g/L, with the spread of its composition and use
     */
    public double gramsPerLitreAt(Interval yield, double deviate) {
        if (!(yield.median() > 0)) {
            return 0;
        }
        double end = deviate < 0 ? yield.low() : yield.high();
        double own = Math.log(Math.max(1e-3, end / yield.median())) / Interval.NORMAL_95;
        double size = Math.abs(deviate);
        double log = Math.hypot(own, deviation) * size + tail * Math.max(0, size - TAIL_FROM);
        return yield.median() * Math.exp(Math.copySign(log, deviate));
    }
}
