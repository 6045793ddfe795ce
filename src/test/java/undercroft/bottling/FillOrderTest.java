package undercroft.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.bottling.Days.day;
import static undercroft.bottling.Days.plan;
import static undercroft.bottling.Days.stock;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.Volume;
import undercroft.wording.English;

class FillOrderTest {
    private static List<Integer> filled(BottlingDay day) {
        return day.order().rows().stream().map(FillRow::filled).toList();
    }

    /** 23 L less 1 L: 22/0.33 = 66.7, 22/0.355 = 61.97, 22/0.5 = 44, 22/0.75 = 29.3 (arithmetic). */
    @ParameterizedTest
    @CsvSource({"longneck-330, 66", "longneck-355, 61", "returnable-500, 44", "sparkling-750, 29"})
    void wholeBottlesAreCountedFromTheBeerThatIsThere(String bottle, int count) {
        BottlingDay day = day(plan(2.2, "sucrose", stock(bottle, 100)).withShares(new FillingPlan.Shares(23, 1, 0)));
        assertEquals(List.of(count), filled(day));
    }

    /** About 48 twelve-ounce bottles from five US gallons, 24 from half of it (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"5, 1.5, 48", "2.5, 0.75, 24"})
    void aTradeBatchFillsTheBottlesTheTradeCounts(double gallons, double lossLitres, int count) {
        double litres = Volume.ofUsGallons(gallons).litres();
        BottlingDay day = day(plan(2.2, "sucrose", stock("longneck-355", 60))
                .withShares(new FillingPlan.Shares(litres, lossLitres, 0)));
        assertEquals(count, day.order().filled(), 1.5);
    }

    /** 19 L: 20 × 0.5 = 10, 9 left; 6 × 1 = 6, 3 left; 3/0.33 = 9 and 30 mL left (arithmetic). */
    @Test
    void bottlesAreFilledInTheOrderTheyWereSetOut() {
        BottlingDay day = day(plan(
                2.2, "sucrose", stock("returnable-500", 20), stock("swingtop-1000", 6), stock("longneck-330", 24)));
        assertEquals(List.of(20, 6, 9), filled(day));
        assertEquals(0.03, day.order().leftOverLitres(), 1e-9);
        assertTrue(day.order().notes().stream()
                .map(English::of)
                .anyMatch("15 of 24 × 330 mL longneck stay empty: there is no beer for them."::equals));
    }

    /** 19/0.5 = 38 bottles; a plastic one takes the place of the last (arithmetic). */
    @Test
    void onePlasticBottleComesFirstEvenAtTheEndOfTheList() {
        BottlingDay day = day(plan(2.2, "sucrose", stock("returnable-500", 60), stock("pet-500", 4)));
        assertEquals(List.of(37, 1), filled(day));
        assertEquals("pet-500", day.order().testBottle().orElseThrow().id());
    }

    @Test
    void aHalfBottleLeftOverIsToldWithItsShare() {
        BottlingDay day =
                day(plan(2.2, "sucrose", stock("swingtop-1000", 40)).withShares(new FillingPlan.Shares(20, 1.4, 0)));
        assertEquals(18, day.order().filled());
        assertTrue(English.of(day.order().notes().get(0)).startsWith("600 mL are left over, 60 % of a 1 L swing-top"));
    }

    @Test
    void tooFewBottlesLeaveBeerWithoutOne() {
        BottlingDay day = day(plan(2.2, "sucrose", stock("returnable-500", 30)));
        assertEquals(4, day.order().leftOverLitres(), 1e-9);
        assertTrue(English.of(day.order().notes().get(0)).startsWith("4.0 L find no bottle"));
    }

    @Test
    void theKegsShareDoesNotGoToBottles() {
        BottlingDay day =
                day(plan(2.2, "sucrose", stock("returnable-500", 60)).withShares(new FillingPlan.Shares(20, 1, 9)));
        assertEquals(20, day.order().filled());
        assertEquals(9, day.keg().orElseThrow().litres(), 1e-12);
    }

    /** A twentieth more, at least five: 44 need 49, 200 need 210 (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"44, 49", "100, 105", "101, 107", "200, 210", "1, 6"})
    void capsComeWithSpares(int bottles, int caps) {
        assertEquals(caps, Supplies.withSpares(bottles));
    }
}
