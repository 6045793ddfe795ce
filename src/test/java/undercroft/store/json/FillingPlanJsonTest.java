package undercroft.store.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Sanitiser;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Priming;
import undercroft.cellar.StepState;
import undercroft.cellar.Yeast;
import undercroft.quantity.InvalidInput;

class FillingPlanJsonTest {
    private static final FillingPlan PLAN = new FillingPlan(
            new FillingPlan.Shares(21.5, 1.2, 5),
            List.of(new BottleStock("longneck-330", GlassColour.GREEN, true, 24)),
            new FillingPlan.Wish(2.4, OptionalDouble.of(1.9), "honey", true),
            new FillingPlan.Wash(
                    Sanitiser.PERACETIC_ACID, OptionalDouble.of(1.6), Cleaner.WASHING_SODA, OptionalDouble.empty()),
            List.of(new DatedGravity(LocalDate.of(2026, 11, 12), 1.011)),
            List.of(
                    new StepState("gravity", true, Optional.empty()),
                    new StepState("boil", false, Optional.of(Instant.parse("2026-11-14T12:00:00Z")))));
    private static final Beer BEER =
            new Beer(BeerStyle.WHEAT, 5, 12, 0, 8, 21, OptionalDouble.empty(), OptionalDouble.of(1.010));
    private static final Yeast YEAST = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.POWDERY, false);

    @Test
    void aPlanReadsBackAsItWasWritten() {
        Batch batch = Batch.planned("weizen", "Weizen", BEER, YEAST, PLAN);
        List<InvalidInput> faults = new ArrayList<>();
        assertEquals(batch, BatchJson.read(new JsonFields(BatchJson.write(batch), "", faults)));
        assertTrue(faults.isEmpty());
    }

    @Test
    void aBatchWithoutPlanWritesNoKeyForIt() {
        Batch batch = new Batch(
                "weizen",
                "Weizen",
                BEER,
                YEAST,
                new Priming(20, List.of(), OptionalDouble.empty(), false),
                FillingMethod.CAREFUL,
                Optional.empty(),
                List.of(),
                List.of(),
                "");
        assertFalse(BatchJson.write(batch).has("plan"));
        assertEquals(batch, BatchJson.read(new JsonFields(BatchJson.write(batch), "", new ArrayList<>())));
    }

    @Test
    void faultsInAPlanAreToldWithTheirPlaceAllAtOnce() {
        ObjectNode json = FillingPlanJson.write(PLAN);
        json.put("sanitiser", "holy-water");
        ((ObjectNode) json.withArray("gravities").get(0)).put("day", "2026-02-30");
        ((ObjectNode) json.withArray("steps").get(1)).put("timerFrom", "noon");
        List<InvalidInput> faults = new ArrayList<>();
        FillingPlanJson.read(new JsonFields(json, "plan", faults));
        assertEquals(
                List.of("plan.sanitiser", "plan.gravities[0].day", "plan.steps[1].timerFrom"),
                faults.stream().map(InvalidInput::where).toList());
    }

    @Test
    void whatThisProgramDoesNotKnowOfAPlanStaysUntilItIsCapped() {
        Batch batch = Batch.planned("weizen", "Weizen", BEER, YEAST, PLAN);
        ObjectNode asRead = BatchJson.write(batch);
        ((ObjectNode) asRead.get("plan")).put("helper", "Ann");
        ObjectNode changed = BatchJson.write(batch.withPlan(PLAN.withSteps(List.of())));
        KeptKeys.carryOver(asRead, BatchJson.write(batch), changed);
        assertEquals("Ann", changed.get("plan").get("helper").textValue());
        ObjectNode bare = BatchJson.write(batch);
        bare.remove("plan");
        KeptKeys.carryOver(asRead, BatchJson.write(batch), bare);
        assertFalse(bare.has("plan"));
    }
}
