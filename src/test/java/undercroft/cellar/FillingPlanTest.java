package undercroft.cellar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Cover;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Sanitiser;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.InvalidInput;

class FillingPlanTest {
    private static final Beer BEER =
            new Beer(BeerStyle.WHEAT, 5, 12, 0, 8, 21, OptionalDouble.empty(), OptionalDouble.empty());
    private static final Yeast YEAST = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.POWDERY, false);
    private static final FillingPlan DRAFT = FillingPlan.draft(20, 3);

    private static Batch batch(FillingPlan plan) {
        return Batch.planned("weizen", "Weizen", BEER, YEAST, plan);
    }

    private static String faultOf(FillingPlan plan) {
        Cellar cellar = Cellar.empty("Home", ZoneId.of("UTC"));
        return assertThrows(InvalidInput.class, () -> cellar.withBatch(batch(plan)))
                .where();
    }

    @Test
    void aDraftMayBeUnfinished() {
        Cellar cellar = Cellar.empty("Home", ZoneId.of("UTC")).withBatch(batch(DRAFT));
        assertTrue(cellar.batch("weizen").plan().orElseThrow().bottles().isEmpty());
        FillingPlan impossible = DRAFT.withShares(new FillingPlan.Shares(20, 10, 30));
        assertEquals(-20, batch(impossible).plan().orElseThrow().shares().bottleLitres());
    }

    @Test
    void thePrimingFollowsTheDraft() {
        Batch changed = batch(DRAFT)
                .withPlan(DRAFT.withShares(new FillingPlan.Shares(12, 2, 0))
                        .withWish(new FillingPlan.Wish(2.1, OptionalDouble.empty(), "honey", true)));
        assertEquals(new Priming(10, List.of(), OptionalDouble.of(2.1), true), changed.priming());
    }

    @Test
    void sugarAndBottlesHaveToBeOfAKnownKind() {
        assertEquals("batches[0].plan.sugar", faultOf(DRAFT.withWish(FillingPlan.Wish.of(2.4, "stardust"))));
        BottleStock amphorae = new BottleStock("amphora", GlassColour.OPAQUE, false, 2);
        assertEquals("batches[0].plan.bottles[0].bottle", faultOf(DRAFT.withBottles(List.of(amphorae))));
    }

    @Test
    void aCappedBatchHasNoPlan() {
        Instant capped = Instant.parse("2026-11-14T12:00:00Z");
        Lot lot = new Lot(
                "a",
                "longneck-330",
                GlassColour.AMBER,
                3,
                330,
                false,
                List.of(new Stay("loft", capped, Cover.NONE)),
                List.of());
        Batch planned = batch(DRAFT);
        InvalidInput fault = assertThrows(
                InvalidInput.class,
                () -> new Batch(
                        planned.id(),
                        planned.name(),
                        BEER,
                        YEAST,
                        planned.priming(),
                        planned.fillingMethod(),
                        Optional.of(capped),
                        List.of(lot),
                        List.of(),
                        "",
                        Optional.of(DRAFT)));
        assertEquals("plan", fault.where());
    }

    @Test
    void figuresOutOfRangeAreRefusedWhereTheyStand() {
        assertThrows(InvalidInput.class, () -> FillingPlan.Wish.of(7.1, "sucrose"));
        assertThrows(InvalidInput.class, () -> FillingPlan.Wish.of(Double.NaN, "sucrose"));
        assertThrows(InvalidInput.class, () -> new FillingPlan.Shares(0, 0, 0));
        assertThrows(InvalidInput.class, () -> new BottleStock("pet-500", GlassColour.PET_CLEAR, false, -1));
        assertThrows(InvalidInput.class, () -> new DatedGravity(LocalDate.of(206, 1, 1), 1.010));
        InvalidInput rate = assertThrows(
                InvalidInput.class,
                () -> new FillingPlan.Wash(
                        Sanitiser.IODOPHOR, OptionalDouble.of(0), Cleaner.HOT_WATER, OptionalDouble.empty()));
        assertEquals("sanitiserMillilitresPerLitre", rate.where());
        StepState step = new StepState("boil", true, Optional.empty());
        assertThrows(InvalidInput.class, () -> DRAFT.withSteps(List.of(step, step)));
    }
}
