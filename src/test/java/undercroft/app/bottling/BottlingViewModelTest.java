package undercroft.app.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.bottling.Step;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.lot.Alert;
import undercroft.quantity.UnitSystem;
import undercroft.report.sheet.CrateLabels;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.English;
import undercroft.wording.Messages;

final class BottlingViewModelTest {
    private final PlanSamples.HandClock clock = new PlanSamples.HandClock();
    private final List<String> capped = new ArrayList<>();
    private Workspace workspace;
    private BottlingViewModel model;

    @BeforeEach
    void open() {
        workspace = SampleWorkspace.of(PlanSamples.cellar());
        model = new BottlingViewModel(Messages.english(), workspace, clock, capped::add);
        model.open("pale");
    }

    private PlanForm form() {
        return model.formProperty().get();
    }

    private DaySheet sheet() {
        return new DaySheet(form().dayProperty().get().orElseThrow(), English.in(UnitSystem.METRIC));
    }

    private Batch stored() {
        return workspace.getCellar().batch("pale");
    }

    private FillingPlan plan() {
        return stored().plan().orElseThrow();
    }

    private static void type(NumberField field, String text) {
        field.textProperty().set(text);
    }

    @Test
    void lookingAtADraftChangesNothing() {
        for (BottlingPage screen : BottlingPage.values()) {
            model.show(screen);
        }
        assertEquals("", workspace.undoTextProperty().get());
    }

    @Test
    void whatIsTypedOnOnePageIsTakenBackTogether() {
        model.show(BottlingPage.CARBONATION);
        for (String typed : List.of("2", "2.", "2.3", "2.35")) {
            type(form().wish().target(), typed);
            model.keep();
        }
        assertEquals(2.35, plan().wish().targetVolumes());
        workspace.undo();
        assertEquals(2.2, plan().wish().targetVolumes());
        assertEquals("", workspace.undoTextProperty().get());
        assertEquals("2.2", form().wish().target().textProperty().get(), "the page follows");
    }

    @Test
    void changesOnTwoPagesAreTakenBackOneByOne() {
        type((NumberField) form().shares().fields().get(0), "18");
        model.show(BottlingPage.CARBONATION);
        type(form().wish().target(), "2.4");
        model.show(BottlingPage.SUGAR);
        workspace.undo();
        assertEquals(2.2, plan().wish().targetVolumes());
        assertEquals(18, plan().shares().vesselLitres());
    }

    @Test
    void aDraftIsThereAgainAfterARestart() {
        type(form().wish().target(), "2.4");
        model.close();
        BottlingViewModel later = new BottlingViewModel(
                Messages.english(), SampleWorkspace.of(workspace.getCellar()), clock, capped::add);
        later.open("pale");
        assertEquals(
                "2.4", later.formProperty().get().wish().target().textProperty().get());
    }

    @Test
    void severalDraftsAreKeptSideBySide() {
        model.close();
        NewPlanForm begun = model.newPlan();
        ((WordsField) begun.fields().get(0)).textProperty().set("Second");
        type((NumberField) begun.fields().get(2), "10");
        model.start(begun);
        assertEquals(
                List.of("Pale", "Second"),
                model.plansProperty().get().stream().map(Batch::name).toList());
        assertEquals("Second", form().name().textProperty().get());
        assertTrue(form().dayProperty().get().isEmpty(), "no bottles are set out yet");
        assertTrue(
                form().faultProperty().get().contains("none are set out"),
                form().faultProperty().get());
    }

    @Test
    void aTargetBeyondTheBottlesIsRefusedWithTheHighestWithinTheLimit() {
        type(form().wish().target(), "4.5");
        String refusal = English.of(sheet().day().refusals().get(0));
        assertTrue(refusal.contains("the highest target within the limit (estimate) is"), refusal);
        double highest = sheet().day().highestTargetVolumes().orElseThrow();
        type(form().wish().target(), String.valueOf(Math.floor(highest * 10) / 10));
        assertEquals(List.of(), sheet().day().refusals());
    }

    @Test
    void aBeerTwoPointsFromFinishedIsToldToWaitWithAboutAVolumeAtStake() {
        // From the trade: two gravity points left are about one volume (common practice, no source).
        type(form().gravities().list().get(1).gravity(), "1.012");
        DaySheet.Verdict verdict = sheet().verdict();
        assertEquals(Alert.ACT, verdict.alert());
        assertEquals("Wait", verdict.word());
        assertTrue(verdict.stake().contains("about 1 vol"), verdict.stake());
    }

    @Test
    void aTargetBelowWhatTheBeerHoldsNeedsNoSugar() {
        type(form().wish().target(), "0.5");
        assertTrue(sheet().day().sugar().dose().notNeeded());
        assertFalse(sheet().day().sugar().notes().isEmpty());
    }

    @Test
    void aGravityOfTomorrowIsSaidBesideItsDayThoughARowAboveIsEmpty() {
        form().addGravity();
        GravityForm row = form().addGravity();
        type(row.gravity(), "1.010");
        row.day().leave();
        row.day().textProperty().set("22 Nov 2026");
        assertTrue(
                row.day().faultProperty().get().contains("lies in the future"),
                row.day().faultProperty().get());
        assertTrue(form().canSave(), "a draft may be wrong");
        assertTrue(form().dayProperty().get().isEmpty());
    }

    @Test
    void aGravityNoBeerHasIsRefused() {
        NumberField gravity = form().gravities().list().get(0).gravity();
        for (String typed : List.of("0.979", "1.201", "beer")) {
            type(gravity, typed);
            assertFalse(gravity.faultProperty().get().isEmpty(), typed);
            assertFalse(form().canSave());
        }
    }

    @Test
    void kegAndLossTogetherMustLeaveBeerForBottles() {
        type((NumberField) form().shares().fields().get(2), "19");
        assertTrue(form().dayProperty().get().isEmpty());
        String fault = form().shares().fields().get(0).faultProperty().get();
        assertTrue(fault.contains("leave some beer for bottles"), fault);
    }

    @Test
    void tickAndTimerGoOnAfterARestart() {
        Step boil = step("boil");
        list().tick(step("gravity"), true);
        list().startTimer(boil);
        clock.forward(Duration.ofMinutes(4));
        model = new BottlingViewModel(
                Messages.english(), SampleWorkspace.of(workspace.getCellar()), clock, capped::add);
        model.open("pale");
        assertTrue(list().checklist().isDone("gravity"));
        assertEquals("6:00", list().left(boil), "ten minutes of boiling, four of them over");
        assertFalse(list().isOver(boil));
        clock.forward(Duration.ofMinutes(6));
        assertTrue(list().isOver(boil));
        assertEquals(boil, list().waiting().orElseThrow());
        list().tick(boil, true);
        assertTrue(list().waiting().isEmpty(), "a ticked step calls no more");
    }

    @Test
    void aTickIsKeptThoughAFigureElsewhereCannotBeRead() {
        type(form().wish().target(), "lots");
        list().tick(step("gravity"), true);
        assertEquals(1, plan().steps().size());
        assertEquals(2.2, plan().wish().targetVolumes());
        assertTrue(list().checklist().isDone("gravity"));
    }

    private DayList list() {
        return model.dayList().orElseThrow();
    }

    private Step step(String id) {
        return list().checklist().steps().stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void cappingAsPlannedPutsTheBatchOnTheShelf() {
        model.show(BottlingPage.CAP);
        CappingForm done = model.capping().orElseThrow();
        CrateLabels.Sheets sheets =
                model.printouts().orElseThrow().labels(model.cellar(), done).get();
        model.labelled(sheets.printed());
        assertEquals("57", done.counts().get(0).textProperty().get(), "19 L are 57 bottles of 0.33 L");
        model.cap(done);
        assertEquals(List.of("pale"), capped);
        assertEquals(Optional.of(sheets.printed()), stored().packaging().label());
        assertEquals(57, stored().leftAt(clock.instant()));
        assertTrue(stored().plan().isEmpty());
        assertEquals("", stored().notes());
        assertNull(model.formProperty().get());
        workspace.undo();
        assertTrue(stored().cappedAt().isEmpty(), "undo brings the draft back");
    }

    @Test
    void aBottlingIsSplitOverTwoPlacesFromCappingOn() {
        workspace.change(
                "another place",
                cellar -> cellar.withPlace(new Place(
                        "attic", "Attic", new TemperatureSource.Logged(), 6, LightSetting.usual(LightPlace.DARK))));
        CappingForm done = model.capping().orElseThrow();
        done.addElsewhere();
        ElsewhereForm row = done.elsewhere().list().get(0);
        ((NumberField) row.fields().get(0)).textProperty().set("61");
        assertFalse(done.canSave(), "57 are capped");
        ((NumberField) row.fields().get(0)).textProperty().set("20");
        model.cap(done);
        assertEquals(57, stored().leftAt(clock.instant()));
        assertEquals(
                Map.of("cupboard", 37, "attic", 20),
                stored().lots().stream()
                        .collect(Collectors.toMap(lot -> lot.stays().get(0).placeId(), Lot::count)));
        assertTrue(stored().lots().stream().allMatch(lot -> lot.stays().size() == 1), "nothing was moved");
        workspace.undo();
        assertTrue(stored().cappedAt().isEmpty());
    }

    @Test
    void whatWasDoneOtherwiseIsKeptWithTheNotes() {
        CappingForm done = model.capping().orElseThrow();
        type(done.counts().get(0), "55");
        model.cap(done);
        assertTrue(stored().notes().contains("55 instead of 57"), stored().notes());
    }

    @Test
    void moreBottlesThanSetOutAreRefusedBesideTheirCount() {
        CappingForm done = model.capping().orElseThrow();
        type(done.counts().get(0), "61");
        assertFalse(done.canSave());
        assertTrue(done.counts().get(0).faultProperty().get().contains("60 were set out"));
    }

    @Test
    void aBatchToldToWaitIsCappedOnlyOnceThePersonSaysSo() {
        type(form().gravities().list().get(1).gravity(), "1.012");
        CappingForm done = model.capping().orElseThrow();
        assertFalse(done.canSave());
        done.allTheSame().tickedProperty().set(true);
        assertTrue(done.canSave());
    }
}
