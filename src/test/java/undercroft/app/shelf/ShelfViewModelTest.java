package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Cover;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookSamples;
import undercroft.outlook.lot.Alert;
import undercroft.wording.Messages;

class ShelfViewModelTest {
    private final Cellar cellar = OutlookSamples.cellar();
    private final SimpleObjectProperty<CellarOutlook> outlook =
            new SimpleObjectProperty<>(OutlookSamples.outlook(cellar, OutlookSamples.NOW));
    private final ShelfViewModel model = new ShelfViewModel(Messages.english(), outlook);

    private ShelfPlan plan() {
        return model.planProperty().get();
    }

    private ShelfPlan.Crate crate(String key) {
        return plan().crates().stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> keys(List<ShelfPlan.Crate> crates) {
        return crates.stream().map(ShelfPlan.Crate::key).toList();
    }

    @Test
    void aBatchInTwoPlacesHasACrateOnEachPlank() {
        assertEquals(21, crate("heron@cupboard").left());
        assertEquals(4, crate("heron@fridge").left());
        assertEquals("lot-2", crate("heron@fridge").lotId());
    }

    @Test
    void lotsInOnePlaceShareACrateWithARackEach() {
        ShelfPlan.Crate crate = crate("beacon@loft");
        assertEquals(2, crate.racks().size());
        assertEquals(30, crate.count());
        assertEquals(25, crate.left());
    }

    @Test
    void whatNeedsAttentionComesFirst() {
        List<Alert> alerts = plan().planks().get(0).crates().stream()
                .map(ShelfPlan.Crate::alert)
                .toList();
        assertEquals(Alert.ACT, alerts.get(0));
        assertEquals("beacon@loft", model.chosenProperty().get().key());
        assertEquals(
                "fridge",
                plan().planks().get(2).placeId(),
                "a plank with something to watch stands above one where all is well");
    }

    @Test
    void whileTheShelfIsWorkedOutTheChoiceFollowsWhatComesFirst() {
        List<Place> places = new ArrayList<>(cellar.places());
        Collections.reverse(places);
        SimpleObjectProperty<CellarOutlook> soFar =
                new SimpleObjectProperty<>(CellarOutlook.pending(cellar.withPlaces(places), OutlookSamples.NOW));
        ShelfViewModel opening = new ShelfViewModel(Messages.english(), soFar);
        assertNotEquals("beacon@loft", opening.chosenProperty().get().key());
        soFar.set(outlook.get());
        assertEquals("beacon@loft", opening.chosenProperty().get().key());
    }

    @Test
    void whatWasChosenWhileTheShelfIsWorkedOutStays() {
        SimpleObjectProperty<CellarOutlook> soFar =
                new SimpleObjectProperty<>(CellarOutlook.pending(cellar, OutlookSamples.NOW));
        ShelfViewModel opening = new ShelfViewModel(Messages.english(), soFar);
        opening.chooseBatch("heron");
        soFar.set(outlook.get());
        assertEquals("heron", opening.chosenProperty().get().batchId());
    }

    @Test
    void byPlaceKeepsTheOrderOfTheCellar() {
        model.orderProperty().set(ShelfPlan.Order.PLACE);
        assertEquals(
                List.of("loft", "cupboard", "sill", "fridge"),
                plan().planks().stream().map(ShelfPlan.Plank::placeId).toList());
    }

    @Test
    void byAgePutsTheOldestFirst() {
        model.orderProperty().set(ShelfPlan.Order.AGE);
        assertEquals("summer@fridge", plan().planks().get(0).crates().get(0).key());
    }

    @Test
    void plannedAndEmptyBatchesStandApart() {
        assertEquals(List.of("lantern"), keys(plan().planned()));
        assertEquals(List.of("orchard@cupboard"), keys(plan().gone()));
    }

    @Test
    void theArrowsWalkTheShelfAndStopAtItsEnds() {
        model.move(ShelfViewModel.Step.PREVIOUS);
        assertEquals("beacon@loft", model.chosenProperty().get().key());
        model.move(ShelfViewModel.Step.NEXT);
        assertEquals("larch@loft", model.chosenProperty().get().key());
        model.move(ShelfViewModel.Step.PLANK_DOWN);
        assertEquals("fenland@sill", model.chosenProperty().get().key(), "a shorter plank takes its last crate");
        model.move(ShelfViewModel.Step.LAST);
        assertEquals("lantern", model.chosenProperty().get().key(), "hidden empties are not walked");
    }

    @Test
    void aTaskForABatchThatIsGoneBringsItBackToTheShelf() {
        model.chooseBatch("orchard");
        assertEquals(ShelfViewModel.Show.FINISHED, model.showProperty().get());
        assertEquals("orchard@cupboard", model.chosenProperty().get().key());
    }

    @Test
    void aSearchFindsByNamePlaceStyleAndFinishedBatchesToo() {
        model.searchProperty().set("loft HONEY");
        assertEquals(List.of("larch@loft"), keys(plan().crates()));
        assertEquals("larch@loft", model.chosenProperty().get().key());
        model.searchProperty().set("orchard");
        assertEquals(List.of("orchard@cupboard"), keys(plan().crates()));
        model.searchProperty().set("no such beer");
        assertTrue(plan().crates().isEmpty());
        model.searchProperty().set("");
        assertEquals(
                12,
                plan().planks().stream()
                                .mapToInt(plank -> plank.crates().size())
                                .sum()
                        + plan().planned().size());
    }

    @Test
    void whatIsAskedForByNameIsNotHiddenByASearch() {
        model.searchProperty().set("honey");
        model.chooseBatch("quarry");
        assertEquals("quarry@cupboard", model.chosenProperty().get().key());
        assertEquals("", model.searchProperty().get());
    }

    @Test
    void cratesAreMarkedOneByOneOrInARow() {
        ShelfPlan.Crate first = plan().crates().get(0);
        ShelfPlan.Crate third = plan().crates().get(2);
        model.choose(first);
        model.markUpTo(third);
        assertEquals(3, model.markedCrates().size());
        model.mark(third);
        assertEquals(2, model.markedCrates().size());
        model.unmarkAll();
        assertEquals(List.of(), model.markedCrates());
    }

    @Test
    void theSeasonHasARowForEachLotInTheOrderOfTheCrates() {
        ShelfSeason season = ShelfSeason.of(outlook.get(), plan(), Messages.english(), OutlookSamples.NOW);
        assertEquals(
                plan().planks().stream().map(ShelfPlan.Plank::placeId).toList(),
                season.season().lanes().stream().map(lane -> lane.placeId()).toList());
        assertEquals(2, season.rows(crate("beacon@loft")), "bottles of two kinds stand in it");
        assertEquals(1, season.rows(crate("larch@loft")));
        assertEquals(0, season.rows(crate("lantern")), "what is not capped has no season yet");
    }

    @Test
    void theChoiceStaysWithItsBatchWhenTheBottlesMove() {
        model.choose(crate("quarry@cupboard"));
        Cellar moved = cellar.withBatch(cellar.batch("quarry")
                .withLot(cellar.batch("quarry")
                        .lot("lot-1")
                        .movedTo("fridge", OutlookSamples.NOW.minusSeconds(60), Cover.NONE)));
        outlook.set(OutlookSamples.outlook(moved, OutlookSamples.NOW));
        assertEquals("quarry@fridge", model.chosenProperty().get().key());
    }

    @Test
    void anEmptyCellarHasNothingToChoose() {
        outlook.set(OutlookSamples.outlook(cellar.withServings(List.of()).withBatches(List.of()), OutlookSamples.NOW));
        assertTrue(plan().crates().isEmpty());
        assertNull(model.chosenProperty().get());
        model.move(ShelfViewModel.Step.NEXT);
        assertNull(model.chosenProperty().get());
    }

    @Test
    void aCrateSaysEverythingToThoseWhoHearIt() {
        assertEquals(
                "Quarry Porter in Stair cupboard: ready · 2.1 vol, 18 left",
                crate("quarry@cupboard").sentence());
    }

    @Test
    void aShelfThatIsNotWorkedOutYetShowsItsCratesWithoutAWordOnTheBeer() {
        List<String> known = plan().planks().stream()
                .flatMap(plank -> plank.crates().stream())
                .map(ShelfPlan.Crate::key)
                .sorted()
                .toList();
        outlook.set(CellarOutlook.pending(cellar, OutlookSamples.NOW));
        List<ShelfPlan.Crate> pending = plan().crates();
        assertEquals(known, keys(pending).stream().sorted().toList());
        assertTrue(pending.stream()
                .allMatch(crate -> crate.pending()
                        && crate.alert() == Alert.CLEAR
                        && crate.state().equals("calculating…")
                        && crate.fill() == 0));
        assertEquals(21, crate("heron@cupboard").left());
        for (ShelfViewModel.Show show : ShelfViewModel.Show.values()) {
            assertEquals(show == ShelfViewModel.Show.ALL ? pending.size() : 0, model.count(show), "" + show);
        }
        outlook.set(OutlookSamples.outlook(cellar, OutlookSamples.NOW));
        assertTrue(plan().crates().stream().noneMatch(ShelfPlan.Crate::pending));
    }
}
