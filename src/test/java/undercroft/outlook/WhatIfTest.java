package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.SpellSamples.air;
import static undercroft.outlook.SpellSamples.cellar;
import static undercroft.outlook.SpellSamples.day;
import static undercroft.outlook.SpellSamples.isWithin;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Cover;
import undercroft.cellar.Cellar;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

class WhatIfTest {
    private static final Map<String, TimeSeries> AIR =
            Map.of("room", air(60, time -> isWithin(time, 35, 42) ? 30 : 19));

    private static CellarOutlook supposed(Cellar cellar, Supposition... suppositions) {
        return Outlooks.of(cellar, AIR, day(60), List.of(suppositions));
    }

    private static double peak(CellarOutlook outlook) {
        return outlook.batch("ale").mainLot().pressure().peakAhead().high();
    }

    @Test
    void supposingChangesNothing() {
        Cellar cellar = cellar(120, "room");
        Cellar same = cellar(120, "room");
        CellarOutlook before = supposed(cellar);
        supposed(cellar, new Supposition.Moved("ale", "box", "fridge"), new Supposition.Warmer("room", 8, day(61), 5));
        assertEquals(same, cellar);
        assertEquals(peak(before), peak(supposed(cellar)));
    }

    @Test
    void aFridgeThatFailsRaisesThePressureAlertOfAnOverprimedLot() {
        Cellar cellar = cellar(150, "fridge");
        // Finished before it went into the cold: otherwise the yeast would sleep.
        Cellar finished = cellar.withBatch(
                cellar(210, "room").batch("ale").withMove("box", 50, "fridge", day(30), Cover.CLOSED_BOX));
        CellarOutlook today = supposed(finished);
        WhatIf whatIf = WhatIf.of(today, supposed(finished, new Supposition.CoolingFails("fridge", day(60.5), 30)));
        WhatIf.Change change = whatIf.changes().get(0);
        assertTrue(change.passes());
        assertFalse(change.passedAnyway());
        assertTrue(change.alert().compareTo(change.alertBefore()) > 0);
        assertTrue(change.passesAt().orElseThrow().isAfter(day(60)));
        assertEquals("room", change.fix().orElseThrow().placeId());
    }

    @Test
    void theCoolestFixOfAHotRoomIsTheFridge() {
        Cellar cellar = cellar(200, "room");
        WhatIf whatIf = WhatIf.of(supposed(cellar), supposed(cellar, new Supposition.Warmer("room", 15, day(61), 10)));
        Destination fix = whatIf.changes().get(0).fix().orElseThrow();
        assertEquals("fridge", fix.placeId());
        assertTrue(fix.withinLimit());
    }

    @Test
    void aMoveToTheFridgeLowersThePressure() {
        Cellar cellar = cellar(150, "room");
        CellarOutlook moved = supposed(cellar, new Supposition.Moved("ale", "box", "fridge"));
        assertEquals("fridge", moved.batch("ale").mainLot().place().id());
        double here =
                supposed(cellar).batch("ale").mainLot().pressure().trajectory().medianAt(340);
        double there = moved.batch("ale").mainLot().pressure().trajectory().medianAt(340);
        assertTrue(there < here - 0.3);
    }

    @Test
    void aPastSpellAgainIsAsFarOffTheUsualAsItWas() {
        Cellar cellar = cellar(120, "room");
        Span spell = new Span(day(35).getEpochSecond(), day(42).getEpochSecond());
        CellarOutlook again = supposed(cellar, new Supposition.Again("room", spell, day(61)));
        PlaceOutlook room = again.places().get(0);
        PlaceOutlook usual = supposed(cellar).places().get(0);
        int then = room.bottles().indexAt(day(66).getEpochSecond());
        assertEquals(11, room.bottles().valueAt(then) - usual.bottles().valueAt(then), 0.3);
        assertTrue(peak(again) > peak(supposed(cellar)));
    }

    @Test
    void aForecastIsFollowedOnItsDaysAndForgottenAfterwards() {
        Cellar cellar = cellar(120, "room");
        LocalDate first = day(61).atZone(SpellSamples.ZONE).toLocalDate();
        CellarOutlook hot = supposed(
                cellar,
                new Supposition.Forecast(
                        "room",
                        List.of(
                                new Supposition.DayAhead(first, 26, 36),
                                new Supposition.DayAhead(first.plusDays(1), 27, 37))));
        PlaceOutlook room = hot.places().get(0);
        double during = room.bottles().valueAt(room.bottles().indexAt(day(62.4).getEpochSecond()));
        double after = room.bottles().valueAt(room.bottles().indexAt(day(70).getEpochSecond()));
        assertTrue(during > 28, "during " + during);
        assertEquals(
                supposed(cellar)
                        .places()
                        .get(0)
                        .bottles()
                        .valueAt(room.bottles().indexAt(day(70).getEpochSecond())),
                after,
                0.01);
    }

    @Test
    void aPlaceThatIsNotThereIsNamed() {
        Cellar cellar = cellar(120, "room");
        assertThrows(InvalidInput.class, () -> supposed(cellar, new Supposition.Warmer("attic", 5, day(61), 3)));
    }

    @Property(tries = 12, seed = "20260104")
    void aWarmerPlaceNeverLowersThePeak(
            @ForAll @DoubleRange(min = 0, max = 15) double kelvin,
            @ForAll @DoubleRange(min = 1, max = 30) double days) {
        Cellar cellar = cellar(120, "room");
        double usual = peak(supposed(cellar));
        double warmer = peak(supposed(cellar, new Supposition.Warmer("room", kelvin, day(60), days)));
        // The uptake is followed in steps, and a settled lot's spread is read from a table: below what any gauge shows.
        assertTrue(warmer >= usual - 0.01, warmer + " after " + usual);
    }
}
