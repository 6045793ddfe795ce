package undercroft.app.servings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.ServingShelf.local;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.NumberField;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Flocculation;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.ServingShelf;
import undercroft.wording.Messages;

final class ServingFormTest {
    private static final Instant NOW = local("2026-04-13T12:00");
    private Cellar cellar;
    private ServingForm form;

    @BeforeEach
    void begin() {
        cellar = ServingShelf.cellar(
                ServingShelf.ale("ale", Flocculation.FLOCCULENT, 10),
                ServingShelf.ale("cold", Flocculation.FLOCCULENT, 10, "cold", local("2026-04-01T12:00")));
        form = form(cellar);
    }

    private static ServingForm form(Cellar cellar) {
        CellarOutlook outlook = ServingShelf.outlook(cellar, NOW);
        ServingForm.Wish wish = new ServingForm.Wish(Optional.of("ale"), 4, Optional.of(local("2026-04-18T18:00")));
        ServingForm form = ServingForm.adding(Messages.english(), cellar, wish, Optional.of(outlook), NOW);
        choose(form, "serving-place", Optional.of(cellar.place("fridge")));
        return form;
    }

    private static Field<?> field(ServingForm form, String id) {
        return form.fields().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @SuppressWarnings("unchecked")
    private static <T> void choose(ServingForm form, String id, T choice) {
        ((ChoiceField<T>) field(form, id)).chosenProperty().set(choice);
    }

    private void number(String id, String text) {
        ((NumberField) field(form, id)).textProperty().set(text);
    }

    private String fault(String id) {
        form.showFaults();
        assertFalse(form.canSave());
        return field(form, id).faultProperty().get();
    }

    @Test
    void aSoundServingIsKeptWithItsWallClock() {
        assertTrue(form.canSave());
        Serving serving = form.applyTo(cellar).servings().get(0);
        assertEquals(local("2026-04-18T18:00"), serving.at());
        assertEquals(4, serving.bottles());
        assertEquals(CoolingMedium.STILL_FRIDGE, serving.coolingMedium());
    }

    @Test
    void aServingNeedsNoPlaceOfTheCellar() {
        choose(form, "serving-place", Optional.<Place>empty());
        assertTrue(form.canSave());
        Serving serving = form.applyTo(cellar).servings().get(0);
        assertEquals(Optional.empty(), serving.placeId());
    }

    @Test
    void inACellarWithoutAFridgeTheKitchenOneIsProposed() {
        Cellar warm = ServingShelf.cellar(ServingShelf.ale("ale", Flocculation.FLOCCULENT, 10));
        Cellar noFridge = warm.withPlaces(warm.places().stream()
                .filter(place -> warm.batch("ale").lots().get(0).stays().stream()
                        .anyMatch(stay -> stay.placeId().equals(place.id())))
                .toList());
        ServingForm proposed = ServingForm.adding(
                Messages.english(),
                noFridge,
                ServingForm.Wish.OPEN,
                Optional.of(ServingShelf.outlook(noFridge, NOW)),
                NOW);
        assertTrue(proposed.canSave(), () -> fault(proposed));
        assertEquals(
                Optional.empty(), proposed.applyTo(noFridge).servings().get(0).placeId());
    }

    private static String fault(ServingForm refused) {
        return refused.showFaults().map(field -> field.faultProperty().get()).orElse("");
    }

    @Test
    void saturdayAtSixIsTypedAsItIsSaid() {
        DateTimeField at = (DateTimeField) field(form, "serving-at");
        at.dateProperty().set("Saturday 17:30");
        assertTrue(form.canSave());
        assertEquals(
                local("2026-04-18T17:30"),
                form.applyTo(cellar).servings().get(0).at());
        at.leave();
        assertEquals("18 Apr 2026", at.dateProperty().get());
        assertEquals("17:30", at.timeProperty().get());
    }

    @Test
    void aServingInThePastIsRefusedBesideItsDate() {
        ((DateTimeField) field(form, "serving-at")).dateProperty().set("2026-04-12");
        assertTrue(fault("serving-at").contains("over already"), fault("serving-at"));
    }

    @Test
    void moreBottlesThanAreLeftAreRefusedBesideTheNumber() {
        number("serving-bottles", "11");
        assertTrue(fault("serving-bottles").contains("10 are left"), fault("serving-bottles"));
    }

    @Test
    void bottlesThatAnotherServingWantsAreRefused() {
        cellar = cellar.withServings(List.of(ServingShelf.serving("first", "ale", 8, local("2026-04-17T18:00"))));
        form = form(cellar);
        assertTrue(fault("serving-bottles").contains("at most 2"), fault("serving-bottles"));
        number("serving-bottles", "2");
        assertTrue(form.canSave());
    }

    @Test
    void changingAServingDoesNotCountItTwice() {
        Serving serving = ServingShelf.serving("first", "ale", 8, local("2026-04-17T18:00"));
        cellar = cellar.withServings(List.of(serving));
        form = ServingForm.changing(
                Messages.english(), cellar, serving, Optional.of(ServingShelf.outlook(cellar, NOW)), NOW);
        number("serving-bottles", "9");
        assertTrue(form.canSave());
        assertEquals(
                List.of(9),
                form.applyTo(cellar).servings().stream().map(Serving::bottles).toList());
    }

    @Test
    void aGlassColderThanTheFridgeIsRefusedBesideTheGlass() {
        number("serving-glass", "2");
        assertTrue(fault("serving-glass").contains("ice water"), fault("serving-glass"));
        choose(form, "serving-surroundings", CoolingMedium.ICE_WATER);
        assertTrue(form.canSave());
    }

    @Test
    void aBatchThatWillNeverBeReadyIsRefusedBesideItsName() {
        choose(form, "serving-batch", cellar.batch("cold"));
        assertTrue(fault("serving-batch").contains("never be ready"), fault("serving-batch"));
    }

    @Test
    void theGlassTellsWhatIsUsualAndWhoSaysSo() {
        // Common practice, no source: bitter or pale ale at 8 to 13 °C.
        assertEquals(
                "Empty for the usual; bitter or pale ale: 8 to 13 °C, common practice",
                field(form, "serving-glass").hintProperty().get());
    }
}
