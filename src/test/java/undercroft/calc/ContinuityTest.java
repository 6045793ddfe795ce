package undercroft.calc;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.calc.ageing.ShelfLife;
import undercroft.calc.chill.BottleThermal;
import undercroft.calc.chill.Cooling;
import undercroft.calc.chill.FreezerAlarm;
import undercroft.calc.chill.Freezing;
import undercroft.calc.chill.Frost;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.FinishedPressure;
import undercroft.calc.gas.HeatLimit;
import undercroft.calc.gas.PossibleContents;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.PressureMemory;
import undercroft.calc.gas.StrongestBottle;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.gas.WallLoss;
import undercroft.calc.light.BeerSensitivity;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;

/**
 * No figure jumps when what it is made from moves a little. A jump is a difference that stays when the step is halved
 * again and again; a steep figure passes.
 */
class ContinuityTest {
    private static final int STEPS = 400;
    private static final int HALVINGS = 24;
    private static final BottleType LONGNECK = Listed.find(Bottles.STANDARD, "longneck-330", "bottle");
    private static final BottleType PLASTIC = Listed.find(Bottles.STANDARD, "pet-500", "bottle");
    private static final Sugar SUCROSE = Listed.find(Sugars.STANDARD, "sucrose", "sugar");
    private static final double SEA = Atmosphere.barAt(0);
    private static final double STRONGEST = StrongestBottle.of(50, 0.05).typicalFactor();

    /**
     * A figure over one of its inputs.
     *
     * @param jump the smallest difference that would show
     */
    record Sweep(String name, double from, double until, double jump, DoubleUnaryOperator figure) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Sweep> sweeps() {
        return List.of(
                new Sweep(
                        "pressure over grams",
                        0,
                        300,
                        0.01,
                        grams -> finished(grams, 19, 5, 330, 0)
                                .gaugeBar(25, STRONGEST)
                                .high()),
                new Sweep(
                        "heat limit over grams", 0, 300, 0.1, grams -> limit(finished(grams, 19, 5, 330, 0), LONGNECK)),
                new Sweep(
                        "heat limit over litres",
                        8,
                        40,
                        0.1,
                        litres -> limit(finished(150, litres, 5, 330, 0), LONGNECK)),
                new Sweep(
                        "heat limit over strength", 0, 14, 0.1, abv -> limit(finished(150, 19, abv, 330, 0), LONGNECK)),
                new Sweep(
                        "heat limit over fill", 300, 342, 0.1, fill -> limit(finished(150, 19, 5, fill, 0), LONGNECK)),
                new Sweep(
                        "heat limit over altitude",
                        -400,
                        4000,
                        0.1,
                        metres -> limit(finished(150, 19, 5, 330, metres), LONGNECK)),
                new Sweep(
                        "plastic's heat limit over grams",
                        0,
                        300,
                        0.1,
                        grams -> limit(finished(grams, 19, 5, 330, 0), PLASTIC)),
                new Sweep(
                        "pressure over temperature",
                        0,
                        60,
                        0.02,
                        celsius -> finished(150, 19, 5, 330, 0)
                                .gaugeBar(celsius, STRONGEST)
                                .high()),
                new Sweep(
                        "pressure over fill, full model",
                        300,
                        343.9,
                        0.05,
                        fill -> bottle(fill, 5, 20).at(25, 5, 0.95, 1, 0.5).gaugeBar()),
                new Sweep(
                        "pressure over capping temperature",
                        -2,
                        40,
                        0.01,
                        celsius -> bottle(330, 5, celsius)
                                .at(25, 5, 0.95, 0.9, 0.5)
                                .gaugeBar()),
                new Sweep(
                        "pressure over the amount of air",
                        0,
                        1,
                        0.01,
                        air -> bottle(330, 5, 20).at(25, 5, 0.95, air, 0.5).gaugeBar()),
                new Sweep("air over its quantile", 0.1501, 1, 0.01, TrappedAir.NOT_TOLD::amountAt),
                new Sweep(
                        "sugar over the target",
                        0,
                        4,
                        0.1,
                        volumes -> dose(volumes, 19, 20).grams().median()),
                new Sweep(
                        "sugar over litres",
                        1,
                        60,
                        0.1,
                        litres -> dose(2.4, litres, 20).grams().median()),
                new Sweep(
                        "sugar over the warmest temperature",
                        -1,
                        45,
                        0.1,
                        celsius -> dose(2.4, 19, celsius).grams().median()),
                new Sweep(
                        "residual gas over altitude",
                        -400,
                        4000,
                        0.005,
                        metres -> ResidualCarbonation.gramsPerLitre(20, Atmosphere.barAt(metres))
                                .high()),
                new Sweep(
                        "beer factor over strength",
                        0,
                        20,
                        0.001,
                        abv -> BeerFactor.of(abv, 40).low()),
                new Sweep("freezing point over strength", 0, 14, 0.01, abv -> Freezing.ofBeerCelsius(abv, 40)),
                new Sweep(
                        "frost limit over fill",
                        320,
                        343,
                        0.05,
                        fill -> Frost.of(LONGNECK.asUsed(GlassColour.AMBER, fill, false), 5, 40)
                                .burstingCelsius()
                                .orElse(-40)),
                new Sweep(
                        "frost limit over strength",
                        0,
                        10,
                        0.05,
                        abv -> Frost.of(LONGNECK, abv, 40).burstingCelsius().orElse(-40)),
                new Sweep(
                        "chilling over the room",
                        6,
                        40,
                        0.2,
                        celsius -> Cooling.of(LONGNECK, CoolingMedium.STILL_FRIDGE, 4, 6)
                                .minutesSpread(celsius, 6)
                                .orElseThrow()
                                .high()),
                new Sweep(
                        "freezer alarm over the room",
                        0,
                        40,
                        0.1,
                        celsius -> FreezerAlarm.of(BottleThermal.of(LONGNECK), celsius, -18, -2.2)
                                .alarmMinutes()),
                new Sweep(
                        "ageing over temperature",
                        -5,
                        45,
                        0.01,
                        celsius -> ShelfLife.rateAt(celsius).high()),
                new Sweep("light over bitterness", 0, 100, 0.005, ibu -> BeerSensitivity.factor(ibu, 0, 8)),
                new Sweep("load over days", 0, 400, 0.01, days -> PressureMemory.after(2, 3, days * 86_400)),
                new Sweep(
                        "gas kept in plastic over days",
                        0,
                        400,
                        0.001,
                        days -> WallLoss.keptShare(PLASTIC, days).median()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sweeps")
    void noFigureJumps(Sweep sweep) {
        double x = sweep.from();
        double y = sweep.figure().applyAsDouble(x);
        for (int i = 1; i <= STEPS; i++) {
            double next = sweep.from() + (sweep.until() - sweep.from()) * i / STEPS;
            double value = sweep.figure().applyAsDouble(next);
            assertTrue(Double.isFinite(value), "no number at " + next);
            double left = jumpBetween(sweep, x, y, next, value);
            assertTrue(left < sweep.jump(), "jumps by " + left + " between " + x + " and " + next);
            x = next;
            y = value;
        }
    }

    /** What is left of the largest difference between two points after halving the way to it. */
    private static double jumpBetween(Sweep sweep, double from, double atFrom, double until, double atUntil) {
        double low = from;
        double lowValue = atFrom;
        double high = until;
        double highValue = atUntil;
        for (int i = 0; i < HALVINGS && Math.abs(highValue - lowValue) >= sweep.jump(); i++) {
            double middle = (low + high) / 2;
            double value = sweep.figure().applyAsDouble(middle);
            if (Math.abs(value - lowValue) >= Math.abs(highValue - value)) {
                high = middle;
                highValue = value;
            } else {
                low = middle;
                lowValue = value;
            }
        }
        return Math.abs(highValue - lowValue);
    }

    private static FinishedPressure finished(double grams, double litres, double abv, double fill, double metres) {
        double bar = Atmosphere.barAt(metres);
        double made = grams / litres * 0.4886;
        PossibleContents contents = PossibleContents.of(
                ResidualCarbonation.gramsPerLitre(20, bar),
                Interval.of(0.92 * made, made, 1.08 * made),
                Interval.exactly(0),
                BeerFactor.of(abv, 40),
                TrappedAir.NOT_TOLD);
        return FinishedPressure.of(ClosedBottle.of(344, fill, abv, 20, bar), contents);
    }

    private static double limit(FinishedPressure pressure, BottleType type) {
        HeatLimit limit = pressure.heatLimit(STRONGEST, PressureLimits.of(type));
        return limit.celsius();
    }

    private static ClosedBottle bottle(double fill, double abv, double cappedAt) {
        return ClosedBottle.of(344, fill, abv, cappedAt, SEA);
    }

    private static PrimingDose dose(double volumes, double litres, double warmest) {
        return PrimingDose.forTarget(SUCROSE, litres, warmest, Carbonation.ofVolumes(volumes), SEA);
    }
}
