package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Listed;

class BottleThermalTest {
    /** Typical figures of the trade for these bottles, from memory; no maker's drawing was found. */
    @ParameterizedTest
    @CsvSource({
        "longneck-330, 1.51, 0.0400",
        "longneck-355, 1.61, 0.0410",
        "returnable-500, 2.35, 0.0531",
        "sparkling-750, 3.76, 0.0751"
    })
    void usualBottlesHaveTheirUsualOutsideAndHeat(String id, double capacity, double area) {
        BottleThermal bottle = BottleThermal.of(Listed.find(Bottles.STANDARD, id, "bottle"));
        assertEquals(capacity, bottle.heatCapacityKilojoulesPerKelvin(), 0.01 * capacity);
        assertEquals(area, bottle.areaSquareMetres(), 0.02 * area);
    }

    /** No body encloses a volume with less outside than a ball. */
    @Property(tries = 300, seed = "20260104")
    void noBottleHasLessOutsideThanABall(
            @ForAll @DoubleRange(min = 50, max = 10_000) double fill,
            @ForAll @DoubleRange(min = 30, max = 250) double body) {
        BottleType type = new BottleType(
                "own",
                "own",
                GlassColour.AMBER,
                BottleClass.STANDARD,
                Closure.CROWN,
                fill,
                fill * 1.04,
                2.5,
                Math.min(5000, fill * 0.6),
                body,
                OptionalDouble.empty());
        double volume = (type.brimfulMillilitres() + type.emptyGrams() / 2.5) * 1e-6;
        double ball = Math.cbrt(36 * Math.PI) * Math.pow(volume, 2.0 / 3);
        assertTrue(BottleThermal.of(type).areaSquareMetres() > ball);
    }
}
