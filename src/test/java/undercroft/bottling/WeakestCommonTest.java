package undercroft.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.bottling.Days.day;
import static undercroft.bottling.Days.plan;
import static undercroft.bottling.Days.stock;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeakestCommonTest {
    /** The plan and the dose alone are about the same bottles, so they tell the same limit; their beers differ a little. */
    @ParameterizedTest
    @ValueSource(doubles = {2.0, 2.4, 2.8, 3.3})
    void aDoseHasTheLimitOfItsBottlingDay(double target) {
        BottlingDay day = day(plan(target, "sucrose", stock("longneck-330", 50)));
        BottlePressure planned = day.weakest().orElseThrow();
        WeakestCommon clean = WeakestCommon.of(
                day.sugar().dose(),
                day.plan().beer().warmestCelsius(),
                day.plan().atmosphereBar(),
                planned.bottles(),
                false);
        assertEquals(planned.heatLimit().celsius(), clean.heatLimit().celsius(), 0.5);
        assertEquals(planned.limits(), clean.limits());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.8, 2.4, 3.0})
    void scuffedBottlesBearLess(double target) {
        BottlingDay day = day(plan(target, "sucrose", stock("longneck-330", 50)));
        WeakestCommon clean = of(day, false);
        WeakestCommon scuffed = of(day, true);
        assertTrue(scuffed.heatLimit().celsius() < clean.heatLimit().celsius() - 5);
        assertEquals(3.5, scuffed.limits().workingPressureBar());
    }

    private static WeakestCommon of(BottlingDay day, boolean scuffed) {
        return WeakestCommon.of(
                day.sugar().dose(), 20, day.plan().atmosphereBar(), WeakestCommon.USUAL_BOTTLES, scuffed);
    }
}
