package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.NumberField;
import undercroft.app.form.batch.DrawForm;
import undercroft.app.form.batch.MoveForm;
import undercroft.app.form.batch.ReadingForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.store.CellarStore;
import undercroft.wording.Messages;

/** What is done to a cellar by a command is what the window's form does, and a fault changes nothing. */
class ChangeCommandsTest {
    private static final Instant NOW = Instant.parse("2026-11-21T17:00:00Z");

    @TempDir
    Path scratch;

    private Path folder;
    private Cellar before;

    @BeforeEach
    void copyTheDemo() throws IOException {
        folder = scratch.resolve("cellar");
        try (var files = Files.walk(Path.of("demo-data/weir-house"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(Path.of("demo-data/weir-house").relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        before = CellarStore.read(folder);
    }

    private Terminal run(String command, String... arguments) {
        List<String> line = new ArrayList<>(List.of(command, folder.toString()));
        line.addAll(List.of(arguments));
        return Terminal.run(scratch, line.toArray(String[]::new));
    }

    private Cellar saved() {
        return CellarStore.read(folder);
    }

    private static void type(Form form, String id, String text) {
        ((NumberField) form.allFields().stream()
                        .filter(field -> field.id().equals(id))
                        .findFirst()
                        .orElseThrow())
                .textProperty()
                .set(text);
    }

    private void isRefused(Terminal said, String part) {
        assertEquals(2, said.code(), said.out());
        assertEquals(1, said.err().lines().count(), said.err());
        assertTrue(said.err().contains(part), said.err());
        assertEquals(before, saved(), "nothing is half done");
    }

    @Test
    void bottlesTakenAreThoseOfTheForm() {
        Batch batch = before.batch("first-cut-pale");
        Lot lot = batch.lots().get(0);
        DrawForm form = new DrawForm(Messages.english(), before, batch, lot, NOW);
        type(form, "draw-count", "2");
        Terminal said = run("draw", "First Cut Pale", "--count", "2");
        assertEquals(0, said.code(), said.err());
        assertEquals(form.applyTo(before), saved());
        assertTrue(said.out().startsWith("First Cut Pale: 2 bottles opened; 12 left."), said.out());
        assertEquals(1, said.out().split("Estimate only", -1).length - 1, said.out());
    }

    @Test
    void bottlesMovedAreThoseOfTheForm() {
        Batch batch = before.batch("quarry-porter");
        MoveForm form = new MoveForm(
                Messages.english(),
                before,
                batch,
                batch.lots().get(0),
                NOW,
                Optional.of(before.place("outhouse")),
                false,
                place -> Optional.empty());
        type(form, "move-count", "5");
        Terminal said = run("move", "quarry-porter", "--to", "outhouse", "--count", "5");
        assertEquals(0, said.code(), said.err());
        assertEquals(form.applyTo(before), saved());
    }

    @Test
    void aReadingIsThatOfTheFormAndItsMeaningIsSaid() throws IOException {
        Batch batch = before.batch("quarry-porter");
        ReadingForm form =
                new ReadingForm(Messages.english(), before, batch, batch.lots().get(0), NOW);
        type(form, "reading-pressure", "3.4");
        Terminal said = run("read", "quarry-porter", "--gauge", "3.4bar", "--instrument", usualGauge(form));
        assertEquals(0, said.code(), said.err());
        assertEquals(form.applyTo(before), saved());
        assertTrue(said.out().contains("Before: ") && said.out().contains("Now: "), said.out());
        Terminal again = run("read", "quarry-porter", "--gauge", "3.4bar", "--json");
        assertEquals(
                "quarry-porter",
                new ObjectMapper().readTree(again.out()).get("batch").asText());
    }

    private static String usualGauge(ReadingForm form) {
        return form.allFields().stream()
                .filter(field -> field.id().equals("reading-gauge"))
                .map(Field::value)
                .map(String::valueOf)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void promisedBottlesAreServedAndTheTimeOfChillingIsSaid() {
        Terminal said = run("serve", "quarry-porter", "--bottles", "3", "--at", "2026-12-24T18:00:00Z");
        assertEquals(0, said.code(), said.err());
        assertEquals(before.servings().size() + 1, saved().servings().size());
        assertTrue(said.out().contains("Into the cold: "), said.out());
    }

    @Test
    void aPlanIsCappedAsPlanned() {
        Batch planned = before.batches().stream()
                .filter(batch -> batch.plan().isPresent())
                .findFirst()
                .orElseThrow();
        Terminal said = run("cap", planned.id(), "--place", "stair-cupboard", "--all-the-same");
        assertEquals(0, said.code(), said.err());
        Batch capped = saved().batch(planned.id());
        assertEquals(Optional.of(NOW), capped.cappedAt());
        assertTrue(capped.lots().stream()
                .allMatch(lot -> lot.stays().get(0).placeId().equals("stair-cupboard")));
    }

    @Test
    void everyFaultIsOneSentenceThatNamesItsOptionAndChangesNothing() {
        isRefused(run("draw", "nobody"), "batch: “nobody” is no batch");
        isRefused(run("draw", "first-cut-pale", "--count", "15"), "--count: more bottles are taken than the 14");
        isRefused(run("draw", "first-cut-pale", "--at", "2026-12-24T18:00:00Z"), "--at: this is still to come");
        isRefused(run("draw", "first-cut-pale", "--fate", "burst", "--carbonation", "soft"), "--carbonation: only");
        isRefused(run("draw", "first-cut-pale", "--at", "2026-01-24T18:00:00Z"), "before these bottles were capped");
        isRefused(run("move", "quarry-porter", "--to", "nowhere"), "--to: “nowhere” is not known");
        isRefused(run("move", "quarry-porter", "--to", "outhouse", "--count", "999"), "--count: ");
        isRefused(run("read", "quarry-porter"), "give one of --gauge, --squeeze, --opened and --gravity");
        isRefused(run("read", "quarry-porter", "--gauge", "99bar"), "--gauge: ");
        isRefused(run("read", "quarry-porter", "--gravity", "1.010", "--at", "2026-01-24T18:00:00Z"), "before");
        isRefused(run("serve", "quarry-porter", "--bottles", "3"), "--at: is missing");
        isRefused(run("serve", "quarry-porter", "--bottles", "999", "--at", "2026-12-24T18:00:00Z"), "--bottles: ");
        isRefused(run("cap", "quarry-porter", "--place", "loft"), "batch: Quarry Porter is capped already");
    }

    @Test
    void whileAWindowHasTheCellarACommandIsRefused() {
        try (CellarStore window = CellarStore.open(folder, Clock.fixed(NOW, ZoneOffset.UTC), "window")) {
            Terminal said = run("draw", "first-cut-pale");
            assertEquals(2, said.code());
            assertEquals(before, window.cellar());
        }
        assertEquals(0, run("draw", "first-cut-pale").code(), "it works again once the window is closed");
    }
}
