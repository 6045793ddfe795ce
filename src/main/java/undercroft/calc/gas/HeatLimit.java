package undercroft.calc.gas;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The warmest temperature, between 0 and 60 °C, at which a bottle stays within a pressure.
 *
 * @param celsius the temperature, to 1e-4 K; 0 when even that is too warm, 60 when the limit is not reached below
 * @param reach what the temperature means
 */
public record HeatLimit(double celsius, Reach reach) {
    /** How the limit came about. */
    public enum Reach {
        /** Above this temperature the pressure is over the limit. */
        PRESSURE,
        /** From this temperature on the beer fills the bottle, though the pressure is still within the limit. */
        LIQUID_FULL,
        /** Over the limit, or liquid-full, already at 0 °C. */
        BEYOND_WHEN_COLD,
        /** Within the limit up to 60 °C. */
        NOT_REACHED,
        /** Within the limit, but above this temperature the bottle's material is not trusted: plastic. */
        MATERIAL
    }

    private static final double COLDEST = 0;
    private static final double WARMEST = Require.WARMEST_CELSIUS;

    /**
     * For one bottle, whose beer must neither exceed the limit nor fill the bottle.
     *
     * @param workingPressureBar gauge pressure not to exceed, bar, above 0
     * @throws IllegalArgumentException outside the ranges of {@link ClosedBottle#at}, or when the limit is not above 0
     */
    public static HeatLimit of(
            ClosedBottle bottle,
            double totalGramsPerLitre,
            double beerFactor,
            double airAmount,
            double airTrapped,
            double workingPressureBar) {
        HeatLimit byPressure = of(
                celsius -> bottle.at(celsius, totalGramsPerLitre, beerFactor, airAmount, airTrapped)
                        .gaugeBar(),
                workingPressureBar);
        OptionalDouble full = bottle.liquidFullCelsius(totalGramsPerLitre, beerFactor, airAmount);
        if (full.isEmpty() || full.getAsDouble() >= byPressure.celsius()) {
            return byPressure;
        }
        return full.getAsDouble() > COLDEST
                ? new HeatLimit(full.getAsDouble(), Reach.LIQUID_FULL)
                : new HeatLimit(COLDEST, Reach.BEYOND_WHEN_COLD);
    }

    /**
     * For any pressure that rises with temperature, such as the 95 % value over many possible bottles. Where it dips on the
     * way, one of its crossings is found.
     *
     * @param gaugeBarAtCelsius gauge pressure, bar, defined and finite from 0 to 60 °C
     * @param workingPressureBar not to be exceeded, bar, above 0
     * @throws IllegalArgumentException when the limit is not above 0
     */
    public static HeatLimit of(DoubleUnaryOperator gaugeBarAtCelsius, double workingPressureBar) {
        if (!(workingPressureBar > 0)) {
            throw new IllegalArgumentException("limitBar is " + workingPressureBar + ", not above 0");
        }
        if (!(gaugeBarAtCelsius.applyAsDouble(COLDEST) <= workingPressureBar)) {
            return new HeatLimit(COLDEST, Reach.BEYOND_WHEN_COLD);
        }
        if (gaugeBarAtCelsius.applyAsDouble(WARMEST) <= workingPressureBar) {
            return new HeatLimit(WARMEST, Reach.NOT_REACHED);
        }
        double celsius = new BrentSolver(1e-5)
                .solve(200, t -> gaugeBarAtCelsius.applyAsDouble(t) - workingPressureBar, COLDEST, WARMEST);
        return new HeatLimit(celsius, Reach.PRESSURE);
    }

    /** The same, no warmer than a temperature that the bottle's material sets, °C; +∞ for none. */
    public HeatLimit cappedAt(double warmestCelsius) {
        return warmestCelsius < celsius ? new HeatLimit(warmestCelsius, Reach.MATERIAL) : this;
    }

    /** The temperature as one number, °C: +∞ where no storage is too warm, −1 where the limit is passed even cold. */
    public double orInfinite() {
        return switch (reach) {
            case NOT_REACHED -> Double.POSITIVE_INFINITY;
            case BEYOND_WHEN_COLD -> -1;
            case PRESSURE, LIQUID_FULL, MATERIAL -> celsius;
        };
    }

    /** True when the bottle stays within its limit at this temperature. */
    public boolean allows(double atCelsius) {
        return switch (reach) {
            case NOT_REACHED -> true;
            case BEYOND_WHEN_COLD -> false;
            case PRESSURE, LIQUID_FULL, MATERIAL -> atCelsius <= celsius;
        };
    }
}
