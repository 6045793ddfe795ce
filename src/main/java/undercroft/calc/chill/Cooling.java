package undercroft.calc.chill;

import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.CoolingMedium;
import undercroft.quantity.Interval;

/**
 * Bottles that take on the temperature of their surroundings, colder or warmer. The beer counts as one lump,
 * C dT/dt = −U(T) A (T − Tₐ), with U from the outside's convection and radiation, the wall, and the beer's own
 * convection in series (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, chapters 5 and 9). Condensation
 * and opened doors are left out. Figures assumed: emissivity 0.9, inside 150 W/(m²·K), a tenth more convection for a
 * slender body than for a flat plate.
 */
public final class Cooling {
    private static final double STEFAN_BOLTZMANN = 5.670374e-8;
    private static final double EMISSIVITY = 0.9;
    private static final double SLENDER = 1.1;
    private static final double INSIDE_WATTS_PER_SQUARE_METRE_KELVIN = 150;
    private static final int STEPS = 48;

    private final BottleThermal bottle;
    private final CoolingMedium coolingMedium;
    private final double coolingMediumCelsius;
    private final Arrangement arrangement;

    private Cooling(
            BottleThermal bottle, CoolingMedium coolingMedium, double coolingMediumCelsius, Arrangement arrangement) {
        this.bottle = bottle;
        this.coolingMedium = coolingMedium;
        this.coolingMediumCelsius = coolingMediumCelsius;
        this.arrangement = arrangement;
    }

    /**
     * Bottles put into surroundings that keep their temperature.
     *
     * @param coolingMediumCelsius −40 to 60 °C; outside that the properties of air do not hold
     * @throws IllegalArgumentException outside that range
     */
    public static Cooling of(
            BottleThermal bottle, CoolingMedium coolingMedium, double coolingMediumCelsius, Arrangement arrangement) {
        held(coolingMediumCelsius);
        return new Cooling(bottle, coolingMedium, coolingMediumCelsius, arrangement);
    }

    /** So many bottles of the make, standing as {@link Arrangement#ofCount} has it. */
    public static Cooling of(BottleType type, CoolingMedium coolingMedium, double coolingMediumCelsius, int bottles) {
        return of(BottleThermal.of(type), coolingMedium, coolingMediumCelsius, Arrangement.ofCount(bottles));
    }

    public double coolingMediumCelsius() {
        return coolingMediumCelsius;
    }

    public Arrangement arrangement() {
        return arrangement;
    }

    /**
     * Overall coefficient from the beer to the surroundings for one bottle alone, W/(m²·K).
     *
     * @param beerCelsius −40 to 60 °C
     */
    public double overallWattsPerSquareMetreKelvin(double beerCelsius) {
        held(beerCelsius);
        if (coolingMedium.flow() == CoolingMedium.Flow.WATER) {
            return coolingMedium.coefficientWattsPerSquareMetreKelvin();
        }
        double within = bottle.wallSquareMetreKelvinPerWatt() + 1 / INSIDE_WATTS_PER_SQUARE_METRE_KELVIN;
        double surface = beerCelsius;
        double overall = 0;
        // The surface lies within a tenth of the way to the air; the fourth round moves U by less than 0.01 %.
        for (int round = 0; round < 4; round++) {
            double outside = convection(surface) + radiation(surface);
            overall = 1 / (1 / outside + within);
            surface = coolingMediumCelsius + (beerCelsius - coolingMediumCelsius) * overall / outside;
        }
        return overall;
    }

    /**
     * Minutes until the difference to the surroundings has fallen to 1/e of what it was, at the rate of this moment.
     *
     * @param beerCelsius −40 to 60 °C
     */
    public double timeConstantMinutes(double beerCelsius) {
        double wattsPerKelvin = overallWattsPerSquareMetreKelvin(beerCelsius) * bottle.areaSquareMetres();
        return arrangement.timeFactor() * bottle.heatCapacityKilojoulesPerKelvin() * 1000 / wattsPerKelvin / 60;
    }

    /**
     * Minutes from one temperature to another. In colder surroundings that means "at most {@code toCelsius}", in warmer
     * ones "at least", so 0 where that holds already.
     *
     * @param fromCelsius −40 to 60 °C
     * @param toCelsius any temperature
     * @return minutes; empty where the surroundings never bring it there, their own temperature included
     */
    public OptionalDouble minutes(double fromCelsius, double toCelsius) {
        held(fromCelsius);
        double away = fromCelsius - coolingMediumCelsius;
        double left = toCelsius - coolingMediumCelsius;
        if (toCelsius == fromCelsius || (away != 0 && left / away >= 1)) {
            return OptionalDouble.of(0);
        }
        if (away == 0 || !(left / away > 0)) {
            return OptionalDouble.empty();
        }
        // ∫ τ d ln θ by Simpson's rule: τ changes slowly with ln θ, so 48 steps leave nothing to see.
        double depth = Math.log(away / left);
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            int weight = i == 0 || i == STEPS ? 1 : (i & 1) == 1 ? 4 : 2;
            sum += weight * timeConstantMinutes(coolingMediumCelsius + away * Math.exp(-depth * i / STEPS));
        }
        return OptionalDouble.of(sum * depth / STEPS / 3);
    }

    /**
     * The same with what real fridges and buckets add to it, 5, 50, 95 %: plans count on the slow end, alarms on the fast
     * one.
     *
     * @return minutes; empty where the surroundings never bring it there
     */
    public Optional<Interval> minutesSpread(double fromCelsius, double toCelsius) {
        OptionalDouble minutes = minutes(fromCelsius, toCelsius);
        return minutes.isEmpty()
                ? Optional.empty()
                : Optional.of(coolingMedium.timeSpread().times(minutes.getAsDouble()));
    }

    /** The temperature that is to be expected after some minutes, °C: {@link #celsiusAfter} at the usual pace. */
    public double usualCelsiusAfter(double fromCelsius, double minutes) {
        return celsiusAfter(fromCelsius, minutes / coolingMedium.timeSpread().median());
    }

    /**
     * Temperature after some minutes, °C, by the classical Runge–Kutta rule on the logarithm of the difference.
     *
     * @param fromCelsius at the start, −40 to 60 °C
     * @param minutes 0 or more
     */
    public double celsiusAfter(double fromCelsius, double minutes) {
        held(fromCelsius);
        if (!(minutes >= 0)) {
            throw new IllegalArgumentException("cooling does not run backwards: " + minutes + " min");
        }
        double away = fromCelsius - coolingMediumCelsius;
        // After forty time constants nothing measurable is left.
        double step = Math.min(minutes, 40 * timeConstantMinutes(coolingMediumCelsius)) / STEPS;
        double depth = 0;
        for (int i = 0; i < STEPS; i++) {
            double first = rate(away, depth);
            double second = rate(away, depth + step / 2 * first);
            double third = rate(away, depth + step / 2 * second);
            double fourth = rate(away, depth + step * third);
            depth += step / 6 * (first + 2 * second + 2 * third + fourth);
        }
        return coolingMediumCelsius + away * Math.exp(-depth);
    }

    private double rate(double away, double depth) {
        return 1 / timeConstantMinutes(coolingMediumCelsius + away * Math.exp(-depth));
    }

    private double convection(double surfaceCelsius) {
        return coolingMedium.flow() == CoolingMedium.Flow.MOVING_AIR
                ? coolingMedium.coefficientWattsPerSquareMetreKelvin()
                : SLENDER * FreeConvection.upright(bottle.plateMetres(), surfaceCelsius, coolingMediumCelsius);
    }

    private double radiation(double surfaceCelsius) {
        double surface = surfaceCelsius + 273.15;
        double walls = coolingMediumCelsius + 273.15;
        return EMISSIVITY * STEFAN_BOLTZMANN * (surface * surface + walls * walls) * (surface + walls);
    }

    private static void held(double celsius) {
        if (!(celsius >= -40 && celsius <= 60)) {
            throw new IllegalArgumentException("cooling is known from -40 to 60 degrees, not at " + celsius);
        }
    }
}
