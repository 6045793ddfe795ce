package undercroft.app.form.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.app.form.FormSamples;
import undercroft.app.form.NumberField;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.Workspace;
import undercroft.wording.English;
import undercroft.wording.Messages;

class PlaceFormTest {
    @Test
    void everyPlaceComesBackAsItWas() {
        for (Place place : FormSamples.CELLAR.places()) {
            PlaceForm form = new PlaceForm(Messages.english(), FormSamples.CELLAR, Optional.of(place));

            assertTrue(form.canSave());
            assertEquals(FormSamples.CELLAR, form.applyTo(FormSamples.CELLAR));
        }
    }

    @Test
    void everyPlaceComesBackAsItWasInUsUnits() {
        for (Place place : FormSamples.US_CELLAR.places()) {
            PlaceForm form = new PlaceForm(Messages.english(), FormSamples.US_CELLAR, Optional.of(place));

            assertEquals(FormSamples.US_CELLAR, form.applyTo(FormSamples.US_CELLAR));
        }
    }

    @Test
    void aSwingIsTakenWithItsWarmestDay() {
        PlaceForm form = FormSamples.newPlace();
        FormSamples.type(form, "place-name", "Earth cellar");
        FormSamples.choose(form, "place-source", PlaceForm.Source.SWING);
        FormSamples.type(form, "place-mean", "11,5");
        FormSamples.type(form, "place-amplitude", "4");
        FormSamples.type(form, "place-warmest", "20 August");
        FormSamples.type(form, "place-spread", "1");

        Place made = form.applyTo(FormSamples.CELLAR).place("earth-cellar");

        assertEquals(new TemperatureSource.YearlySwing(11.5, 4, MonthDay.of(8, 20), 1), made.temperature());
    }

    @Test
    void aLiveSensorIsAskedForWithAGuessUntilItIsHeardAndComesBackAsItWas() {
        PlaceForm form = FormSamples.newPlace();
        FormSamples.type(form, "place-name", "Shed");
        FormSamples.choose(form, "place-source", PlaceForm.Source.TOPIC);
        FormSamples.type(form, "place-topic", "home/+/air");
        assertFalse(form.canSave(), "a pattern is no topic");
        FormSamples.type(form, "place-topic", "home/shed/air");
        FormSamples.type(form, "place-pointer", "/temperature");
        FormSamples.choose(form, "place-topic-unit", TemperatureUnit.FAHRENHEIT);
        FormSamples.type(form, "place-lowest", "50");
        assertFalse(form.canSave(), "the lowest is above the highest");
        FormSamples.type(form, "place-lowest", "-5");
        FormSamples.type(form, "place-guess", "11");

        Cellar made = form.applyTo(FormSamples.CELLAR);
        Place shed = made.place("shed");
        assertEquals(
                Optional.of(new FollowedTopic("home/shed/air", "/temperature", TemperatureUnit.FAHRENHEIT, -5, 45)),
                shed.topic());
        assertEquals(new TemperatureSource.FixedGuess(11, 2), shed.temperature());

        Place heard = shed.withTemperature(new TemperatureSource.Logged());
        PlaceForm again = new PlaceForm(Messages.english(), made.withPlace(heard), Optional.of(heard));
        assertTrue(again.canSave());
        assertEquals(heard, again.applyTo(made.withPlace(heard)).place("shed"));
        FormSamples.choose(again, "place-source", PlaceForm.Source.GUESS);
        assertEquals(Optional.empty(), again.applyTo(made).place("shed").topic());
    }

    @Test
    void whatIsNotAskedIsNotInTheWay() {
        PlaceForm form = FormSamples.newPlace();
        FormSamples.type(form, "place-name", "Shed");
        FormSamples.type(form, "place-guess", "nonsense");
        assertFalse(form.canSave());

        FormSamples.choose(form, "place-source", PlaceForm.Source.LOGGED);

        assertTrue(form.canSave());
    }

    @Test
    void usualLightIsFilledInUnlessItWasMeasured() {
        PlaceForm form = FormSamples.newPlace();
        FormSamples.choose(form, "place-light", LightPlace.SHOP_LED);
        NumberField lux = (NumberField) FormSamples.field(form, "place-lux");
        assertEquals(LightPlace.SHOP_LED.lux(), lux.figure());

        FormSamples.type(form, "place-lux", "420");
        FormSamples.tick(form, "place-measured", true);
        FormSamples.choose(form, "place-light", LightPlace.ROOM_DAY);

        assertEquals(420, lux.figure());
    }

    @Test
    void twoPlacesOfOneNameGetTwoIds() {
        PlaceForm form = FormSamples.newPlace();
        FormSamples.type(form, "place-name", "Loft");

        Cellar made = form.applyTo(FormSamples.CELLAR);

        assertEquals("loft-2", made.places().get(made.places().size() - 1).id());
    }

    @Test
    void aPlaceInUseStaysAndTheSentenceNamesItsBatches() {
        String place = FormSamples.lot().stays().get(0).placeId();

        InvalidInput fault = assertThrows(InvalidInput.class, () -> PlaceForm.without(FormSamples.CELLAR, place));

        assertTrue(English.of(fault).contains(FormSamples.batch().name()), English.of(fault));
    }

    @Test
    void aDeletedPlaceTakesItsTemperaturesAlongAndUndoBringsBothBack() {
        PlaceForm form = FormSamples.newPlace();
        FormSamples.type(form, "place-name", "Shed");
        Workspace workspace = FormSamples.workspace(FormSamples.CELLAR);
        workspace.change(form.what(), form::applyTo);
        assertEquals("Add place Shed", workspace.undoTextProperty().get());
        TimeSeries log = TimeSeries.of(new long[] {0, 1800}, new double[] {12, 13});
        workspace.changeTemperatures("Import temperatures into Shed", "shed", log);
        assertEquals(
                new TemperatureSource.Logged(),
                workspace.getCellar().place("shed").temperature());

        workspace.change("Delete place Shed", cellar -> PlaceForm.without(cellar, "shed"));
        assertEquals(Map.of(), workspace.getState().temperatures());

        workspace.undo();
        assertEquals(log, workspace.getState().temperatures().get("shed"));
        assertEquals("Shed", workspace.getCellar().place("shed").name());
    }
}
