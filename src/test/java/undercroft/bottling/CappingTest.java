package undercroft.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.bottling.Days.plan;
import static undercroft.bottling.Days.stock;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.BottleStock;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.wording.English;

class CappingTest {
    private static final Instant CAPPED = Instant.parse("2026-11-14T15:00:00Z");
    private static final Place STAIRS = new Place(
            "stairs", "Stairs", new TemperatureSource.FixedGuess(19, 1), 6, LightSetting.usual(LightPlace.DARK));
    private static final Batch PLANNED = Batch.planned(
            "ale",
            "Ale",
            Days.beer(20, OptionalDouble.of(1.010)),
            Days.ALE,
            plan(
                    2.4,
                    "sucrose",
                    stock("longneck-330", 20),
                    stock("returnable-500", 60),
                    new BottleStock("longneck-330", GlassColour.GREEN, true, 3)));

    private static BottlingDay day() {
        return BottlingDay.of(BottlingPlan.from(cellar(PLANNED), PLANNED, Days.TODAY));
    }

    private static Cellar cellar(Batch batch) {
        return Cellar.empty("Home", ZoneId.of("UTC")).withPlace(STAIRS).withBatch(batch);
    }

    private static Capping.Done asPlanned() {
        return Capping.Done.asPlanned(day(), CAPPED, "stairs", Cover.CLOSED_BOX);
    }

    @Test
    void capsAsPlannedMakeLotsAndLeaveNoDifferences() {
        Capping capping = Capping.of(PLANNED, day(), asPlanned());
        Batch batch = capping.batch();
        assertTrue(capping.differences().isEmpty());
        assertTrue(batch.plan().isEmpty());
        assertEquals(CAPPED, batch.cappedAt().orElseThrow());
        assertEquals(
                List.of("longneck-330", "returnable-500", "longneck-330-b"),
                batch.lots().stream().map(Lot::id).toList());
        assertEquals(1.010, batch.beer().gravityAtBottling().orElseThrow());
        assertEquals(
                List.of(new SugarDose("sucrose", day().sugar().weighGrams())),
                batch.priming().doses());
    }

    @Test
    void realCountsAndSugarAreKeptAndTheDifferenceIsTold() {
        Capping.Done done = new Capping.Done(
                CAPPED, "stairs", Cover.OPEN_CRATE, FillingMethod.FOAM_CAPPED, List.of(18, 24, 2), 19, 140);
        Capping capping = Capping.of(PLANNED, day(), done);
        assertEquals(
                List.of(18, 24, 2),
                capping.batch().lots().stream().map(Lot::count).toList());
        assertEquals("longneck-330-b", capping.batch().lots().get(2).id());
        assertTrue(capping.batch().lots().get(2).scuffed());
        assertEquals(140, capping.batch().priming().doses().get(0).grams());
        assertEquals(
                "330 mL longneck: 18 instead of 20, 2 fewer.",
                English.of(capping.differences().get(0)));
        assertTrue(capping.differences().stream()
                .map(English::of)
                .anyMatch(line -> line.startsWith("Sugar: 140.0 g (4.94 oz) instead of 121.")));
    }

    /**
     * By hand: 17 g more sucrose in 19 L give 17 × 0.513 × 0.95 / 19 / 1.9768 = 0.22 volumes more than 2.40 (composition and
     * 0.95 as in the dose).
     */
    @Test
    void theGasThatOtherSugarMakesIsTold() {
        Capping.Done plan = asPlanned();
        Capping.Done more = new Capping.Done(
                CAPPED, "stairs", Cover.CLOSED_BOX, FillingMethod.CAREFUL, plan.counts(), 19, plan.sugarGrams() + 17);
        List<Phrase> differences = Capping.of(PLANNED, day(), more).differences();
        assertEquals("That gives about 2.62 vol instead of 2.4 vol, 0.22 vol more.", English.of(differences.get(1)));
    }

    @Test
    void moreBottlesThanWereSetOutOrNoneAtAllAreRefused() {
        Capping.Done tooMany =
                new Capping.Done(CAPPED, "stairs", Cover.CLOSED_BOX, FillingMethod.CAREFUL, List.of(21, 1, 0), 19, 120);
        assertThrows(InvalidInput.class, () -> Capping.of(PLANNED, day(), tooMany));
        Capping.Done none =
                new Capping.Done(CAPPED, "stairs", Cover.CLOSED_BOX, FillingMethod.CAREFUL, List.of(0, 0, 0), 19, 120);
        assertThrows(InvalidInput.class, () -> Capping.of(PLANNED, day(), none));
    }

    @Test
    void theCappedBatchStandsOnTheShelfWithItsOutlook() {
        Batch batch = Capping.of(PLANNED, day(), asPlanned()).batch();
        BatchOutlook outlook = Outlooks.of(cellar(batch), Map.of(), CAPPED.plusSeconds(86_400))
                .batches()
                .get(0);
        assertEquals(Stage.CARBONATING, outlook.stage());
        assertEquals(day().order().filled(), outlook.bottlesLeft());
        assertEquals(2.4, outlook.mainLot().carbonation().atEnd().median(), 0.1);
    }
}
