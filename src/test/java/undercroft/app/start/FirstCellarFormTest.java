package undercroft.app.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.app.form.Field;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;

class FirstCellarFormTest {
    private final FirstCellarForm form = new FirstCellarForm(Messages.english(), ZoneOffset.UTC, UnitSystem.METRIC);

    @Test
    void aNameIsAllThatMustBeTyped() {
        assertFalse(form.canSave());
        assertEquals(
                Optional.of("start-name"), form.showFaults().map(Field::id), "the fault stands under the empty name");
        form.name().textProperty().set("Orchard Row");
        assertTrue(form.canSave());
        Cellar made = form.made();
        assertEquals("Orchard Row", made.name());
        assertEquals("cupboard", made.places().get(0).id());
        assertTrue(made.places().get(0).light().isDark());
        assertEquals(Path.of("docs", "orchard-row"), form.folderIn(Path.of("docs")));
    }

    @Test
    void theClockIsShownAndTheNameOfATownChangesIt() {
        assertEquals("Z", form.zone().textProperty().get());
        form.name().textProperty().set("Barn");
        form.zone().textProperty().set("Vienna");
        assertEquals(ZoneId.of("Europe/Vienna"), form.made().zone());
        assertEquals(ZoneId.of("Europe/Vienna"), form.in(UnitSystem.US).made().zone());
        form.zone().textProperty().set("Nowhere");
        assertFalse(form.canSave());
    }

    @Test
    void aWideGuessGivesAWideSpreadAndTheWarmestIsKept() {
        form.name().textProperty().set("Barn");
        form.temperatures().get(0).textProperty().set("15");
        form.temperatures().get(1).textProperty().set("10");
        form.temperatures().get(2).textProperty().set("28");
        Place place = form.made().places().get(0);
        TemperatureSource.FixedGuess guess = (TemperatureSource.FixedGuess) place.temperature();
        assertEquals(15, guess.celsius());
        // The 95 % point of the normal distribution lies 1.6449 standard deviations up (Abramowitz and Stegun 1964,
        // 26.2).
        assertEquals(28, guess.celsius() + 1.645 * guess.spreadKelvin(), 1e-9);
        assertEquals(28, place.summerMaximumCelsius().orElseThrow());
    }

    @Test
    void aColdestAboveTheUsualIsSaidUnderItsField() {
        form.name().textProperty().set("Barn");
        form.temperatures().get(1).textProperty().set("25");
        form.showFaults();
        assertFalse(form.canSave());
        assertTrue(form.temperatures().get(1).faultProperty().get().contains("warmer"));
    }

    @Test
    void choosingAFridgeGuessesAFridgeAndOtherAsksForItsName() {
        form.name().textProperty().set("Flat");
        form.spot().chosenProperty().set(Spot.FRIDGE);
        assertEquals("5", form.temperatures().get(0).textProperty().get());
        form.spot().chosenProperty().set(Spot.OTHER);
        assertTrue(form.placeName().isAsked());
        assertFalse(form.canSave());
        form.placeName().textProperty().set("Under the stairs");
        assertEquals("under-the-stairs", form.made().places().get(0).id());
    }

    @Test
    void otherUnitsKeepWhatWasTyped() {
        form.name().textProperty().set("Barn");
        form.temperatures().get(0).textProperty().set("20");
        FirstCellarForm us = form.in(UnitSystem.US);
        assertEquals("Barn", us.name().textProperty().get());
        assertEquals("68", us.temperatures().get(0).textProperty().get());
        assertEquals(UnitSystem.US, us.made().settings().units());
    }
}
