package undercroft.calc.stock;

import java.util.List;
import undercroft.quantity.Interval;

/**
 * How many bottles leave a day, from the occasions of the last weeks. Occasions are taken as a Poisson process and their
 * sizes as alike, so a party of twelve tells less than twelve single evenings: the count that carries information is
 * (Σn)²/Σn². With Jeffreys' prior the rate of occasions is a gamma of shape that count + ½ (Gelman et al., Bayesian Data
 * Analysis, section 2.6); its quantiles by Wilson and Hilferty 1931 (Proc. Natl. Acad. Sci. 17:684), from shape 1½ on
 * within 5 %.
 */
public final class DrinkingRate {

    private final double shape;
    private final double bottlesAnOccasion;
    private final double days;

    private DrinkingRate(double shape, double bottlesAnOccasion, double days) {
        this.shape = shape;
        this.bottlesAnOccasion = bottlesAnOccasion;
        this.days = days;
    }

    /**
     * The rate behind what was seen.
     *
     * @param bottlesEachTime one number an occasion, each 1 or more; may be empty
     * @param days watched for, above 0
     */
    public static DrinkingRate of(List<Integer> bottlesEachTime, double days) {
        if (!(days > 0) || bottlesEachTime.stream().anyMatch(bottles -> bottles < 1)) {
            throw new IllegalArgumentException("a rate needs days and whole bottles");
        }
        double sum = bottlesEachTime.stream().mapToDouble(bottles -> bottles).sum();
        double squares = bottlesEachTime.stream()
                .mapToDouble(bottles -> bottles * (double) bottles)
                .sum();
        double occasions = sum == 0 ? 0 : sum * sum / squares;
        return new DrinkingRate(occasions + 0.5, sum == 0 ? 1 : sum / occasions, days);
    }

    /**
     * Bottles a day at a quantile.
     *
     * @param standardDeviations of the normal distribution, such as −1.645 for 5 %
     * @return 0 or more
     */
    public double perDayAt(double standardDeviations) {
        double ninth = 1 / (9 * shape);
        double root = Math.max(0, 1 - ninth + standardDeviations * Math.sqrt(ninth));
        return shape * root * root * root * bottlesAnOccasion / days;
    }

    /** Bottles a day: 5, 50, 95 %. */
    public Interval perDay() {
        return Interval.of(perDayAt(-Interval.NORMAL_95), perDayAt(0), perDayAt(Interval.NORMAL_95));
    }
}
