package undercroft.app.form.cellar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.app.form.FormSamples;
import undercroft.app.form.WordsField;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.session.Workspace;
import undercroft.wording.English;
import undercroft.wording.Messages;

class SettingsFormTest {
    private static final Cellar CELLAR = FormSamples.CELLAR;

    private static BottleForm bottle(SettingsForm settings) {
        BottleForm form = new BottleForm(Messages.english(), settings.draft(), Optional.empty());
        FormSamples.type(form, "bottle-name", "Tall flask");
        FormSamples.type(form, "bottle-fill", "0.6 L");
        FormSamples.type(form, "bottle-brimful", "625");
        FormSamples.type(form, "bottle-weight", "410");
        FormSamples.type(form, "bottle-diameter", "7.4 cm");
        return form;
    }

    @Test
    void anOwnBottleCountsOnceTheSettingsAreSaved() {
        SettingsForm settings = new SettingsForm(Messages.english(), CELLAR, Instant.EPOCH);
        BottleForm asked = bottle(settings);
        assertTrue(asked.canSave());
        settings.change(asked::applyTo);
        FormSamples.type(settings, "settings-altitude", "1000 ft");

        Cellar saved = settings.applyTo(CELLAR);

        BottleType made = saved.bottleType("tall-flask");
        assertEquals(600, made.fillMillilitres());
        assertEquals(74, made.bodyMillimetres());
        assertEquals(304.8, saved.settings().altitudeMetres(), 1e-9);
        assertEquals(UnitSystem.METRIC, saved.settings().units());
    }

    @Test
    void otherUnitsAreNoStepAndKeepWhatCanBeDoneAgain() {
        Workspace workspace = FormSamples.workspace(CELLAR);
        workspace.change("another name", cellar -> cellar.withName("Barn"));
        workspace.undo();
        SettingsForm settings = new SettingsForm(Messages.english(), workspace.getCellar(), Instant.EPOCH);
        FormSamples.choose(settings, "settings-units", UnitSystem.US);
        settings.save(workspace);
        assertEquals(UnitSystem.US, workspace.getCellar().settings().units());
        assertEquals("another name", workspace.redoTextProperty().get());
        assertEquals("", workspace.undoTextProperty().get());
    }

    @Test
    void anOwnBottleInUseStays() {
        SettingsForm settings = new SettingsForm(Messages.english(), CELLAR, Instant.EPOCH);
        settings.change(bottle(settings)::applyTo);
        Cellar saved = settings.applyTo(CELLAR);
        Lot lot = FormSamples.lot();
        Lot inFlask = new Lot(lot.id(), "tall-flask", lot.colour(), lot.count(), 600, false, lot.stays(), lot.draws());
        Cellar used = saved.withBatch(FormSamples.batch().withLot(inFlask));

        SettingsForm again = new SettingsForm(Messages.english(), used, Instant.EPOCH);
        InvalidInput fault = assertThrows(InvalidInput.class, () -> again.remove(used.bottleType("tall-flask")));

        assertTrue(English.of(fault).contains(FormSamples.batch().name()));
        new SettingsForm(Messages.english(), saved, Instant.EPOCH).remove(saved.bottleType("tall-flask"));
    }

    @Test
    void aSugarComesFromItsLabelAndBackAgain() {
        SugarForm form = new SugarForm(Messages.english(), CELLAR, Optional.empty());
        FormSamples.type(form, "sugar-name", "Beet syrup");
        FormSamples.type(form, "sugar-percent", "66.5");
        Cellar saved = form.applyTo(CELLAR);
        Sugar made = saved.sugar("beet-syrup");

        // Two molecules of ethanol and two of CO2 from each hexose, four of each from a disaccharide: 4 x 44.01 /
        // 342.30.
        assertEquals(0.665 * 0.5143, made.yield().median(), 1e-4);
        SugarForm again = new SugarForm(Messages.english(), saved, Optional.of(made));
        assertEquals(saved, again.applyTo(saved));
    }

    @Test
    void theSettingsComeBackAsTheyWere() {
        assertEquals(CELLAR, new SettingsForm(Messages.english(), CELLAR, Instant.EPOCH).applyTo(CELLAR));
        assertEquals(List.of(), CELLAR.ownBottles());
    }

    /** What was learned can be forgotten; the page's address and that stay when the units change afterwards. */
    @Test
    void thePageAndWhatIsForgottenAreKept() {
        Instant now = Instant.parse("2026-11-25T12:00:00Z");
        Workspace workspace = FormSamples.workspace(CELLAR);
        SettingsForm settings = new SettingsForm(Messages.english(), workspace.getCellar(), now);
        settings.fields().stream()
                .filter(WordsField.class::isInstance)
                .map(WordsField.class::cast)
                .filter(field -> field.id().equals("settings-page"))
                .forEach(field -> field.textProperty().set("https://cellar.example/"));
        FormSamples.choose(settings, "settings-teachers", SettingsForm.Teachers.FROM_NOW_ON);
        settings.save(workspace);
        assertEquals(
                Optional.of("https://cellar.example/"),
                workspace.getCellar().settings().pageAddress());
        assertEquals(Optional.of(now), workspace.getCellar().settings().learnsSince());
        SettingsForm again = new SettingsForm(Messages.english(), workspace.getCellar(), now.plusSeconds(60));
        again.save(workspace);
        assertEquals(Optional.of(now), workspace.getCellar().settings().learnsSince(), "the day stays");
    }
}
