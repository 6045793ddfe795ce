package undercroft.app.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.app.form.batch.BatchForm;
import undercroft.app.form.batch.DrawForm;
import undercroft.app.form.batch.MoveForm;
import undercroft.app.form.batch.ReadingForm;
import undercroft.app.form.cellar.BottleForm;
import undercroft.app.form.cellar.SettingsForm;
import undercroft.app.form.cellar.SugarForm;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

class BadInputTest {
    private static Form form(String name) {
        return switch (name) {
            case "place" -> FormSamples.newPlace();
            case "batch" -> FormSamples.newBatch(FormSamples.CELLAR);
            case "us-batch" -> FormSamples.newBatch(FormSamples.US_CELLAR);
            case "edited" ->
                new BatchForm(
                        Messages.english(), FormSamples.CELLAR, Optional.of(FormSamples.batch()), FormSamples.NOW);
            case "move" ->
                new MoveForm(
                        Messages.english(),
                        FormSamples.CELLAR,
                        FormSamples.batch(),
                        FormSamples.lot(),
                        FormSamples.NOW,
                        Optional.empty(),
                        false,
                        place -> Optional.empty());
            case "draw" ->
                new DrawForm(
                        Messages.english(),
                        FormSamples.CELLAR,
                        FormSamples.batch(),
                        FormSamples.lot(),
                        FormSamples.NOW);
            case "reading" ->
                new ReadingForm(
                        Messages.english(),
                        FormSamples.CELLAR,
                        FormSamples.batch(),
                        FormSamples.lot(),
                        FormSamples.NOW);
            case "settings" -> new SettingsForm(Messages.english(), FormSamples.CELLAR, Instant.EPOCH);
            case "bottle" -> new BottleForm(Messages.english(), FormSamples.CELLAR, Optional.empty());
            case "sugar" -> new SugarForm(Messages.english(), FormSamples.CELLAR, Optional.empty());
            default -> throw new AssertionError(name);
        };
    }

    @ParameterizedTest(name = "{0} {1} \"{2}\"")
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            place;    place-name;       ``;              Nothing is given; give it a name.
            place;    place-guess;      ``;              Nothing is given
            place;    place-guess;      warm;            cannot be read; write a temperature
            place;    place-guess;      18 kg;           The unit “kg” is not one of
            place;    place-guess;      18 19;           cannot be read; write a temperature
            place;    place-guess;      1e3;             cannot be read; write a temperature
            place;    place-guess;      NaN;             cannot be read; write a temperature
            place;    place-guess;      -21;             -21 °C is outside what is possible here; give a figure from -20 to 60 °C
            place;    place-spread;     -1;              give a figure from 0 to 20 °C
            batch;    batch-abv;        ``;              Nothing is given
            batch;    batch-abv;        60;              60 % is outside what is possible here; give a figure from 0 to 20 %
            batch;    batch-litres;     20 bar;          The unit “bar” is not one of
            batch;    batch-litres;     0;               from 0.1 to 2000 L
            batch;    batch-litres;     9999999;         100,000
            batch;    batch-gravity;    1.5;             give 0.98 to 1.2
            batch;    batch-capped-at;  31 Nov 2026;     “31 Nov 2026” is not in the calendar
            batch;    batch-capped-at;  2026-13-01;      is not in the calendar
            batch;    batch-capped-at;  11/12/2026;      is not a date
            batch;    batch-capped-at;  1 Oct 2026|25:00; is not a time of day
            us-batch; batch-warmest;    200;             200 °F is outside what is possible here; give a figure from 28.4 to 113 °F
            move;     move-count;       0;               0 is too few; give at least 1
            move;     move-count;       -3;              -3 is too few
            move;     move-count;       2.5;             counted whole
            move;     move-count;       500;             500 is too many
            move;     move-at;          1 Jan 2020;      before these bottles were capped
            move;     move-at;          1 Jan 2090;      still to come
            draw;     draw-count;       500;             500 is too many
            draw;     draw-count;       two;             cannot be read; write a number of bottles
            draw;     draw-at;          1 Jan 2020;      before these bottles were capped
            draw;     draw-at;          1 Jan 0026;      beyond what a cellar knows
            reading;  reading-pressure; ``;              Nothing is given
            reading;  reading-pressure; 40;              40 bar is outside what is possible here; give a figure from -0.5 to 16 bar
            reading;  reading-gauge;    ` `;             Nothing is given; give it a name
            reading;  reading-at;       1 Jan 2020;      before these bottles were capped
            settings; settings-name;    ``;              Nothing is given
            settings; settings-altitude; 9000;           from -400 to 5000 m
            bottle;   bottle-fill;      0.5 g;           The unit “g” is not one of
            bottle;   bottle-test;      99;              from 0.5 to 40 bar
            sugar;    sugar-percent;    120;             from 5 to 100 %
            """)
    void theSentenceStandsUnderItsFieldAndNothingCanBeSaved(String name, String id, String typed, String sentence) {
        Form form = form(name);
        FormSamples.type(form, id, typed);

        assertFalse(form.canSave());
        String shown = FormSamples.fault(form, id);
        assertTrue(shown.contains(sentence), shown);
        assertTrue(shown.endsWith("."), shown);
    }

    @ParameterizedTest(name = "{0} {1} \"{2}\"")
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            place;    place-guess;     15,5
            place;    place-guess;     15.5 °C
            place;    place-guess;     59F
            batch;    batch-litres;    5 gal
            batch;    batch-capped-at; 1 November 2026|7pm
            batch;    batch-capped-at; 2026-11-1|19.30
            batch;    batch-gravity;   ``
            us-batch; batch-litres;    19 L
            """)
    void whatIsMeantIsUnderstood(String name, String id, String typed) {
        Form form = form(name);
        FormSamples.type(form, id, typed);

        assertEquals("", FormSamples.fault(form, id));
    }

    @ParameterizedTest
    @CsvSource({"place-name", "place-guess"})
    void nobodyIsToldOffBeforeLeavingTheField(String id) {
        Form form = FormSamples.newPlace();
        FormSamples.type(form, id, "");
        Field<?> field = FormSamples.field(form, id);

        assertEquals("", field.faultProperty().get());
        field.leave();
        assertFalse(field.faultProperty().get().isEmpty());
        FormSamples.type(form, id, "12");
        assertEquals("", field.faultProperty().get());
    }

    @ParameterizedTest
    @CsvSource({"place", "batch", "bottle", "sugar"})
    void aFaultyFormChangesNothingEvenWhenItIsPressed(String name) {
        Form form = form(name);

        assertThrows(InvalidInput.class, () -> form.applyTo(FormSamples.CELLAR));
    }
}
