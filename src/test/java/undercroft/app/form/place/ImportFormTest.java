package undercroft.app.form.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.FormSamples;
import undercroft.cellar.Place;
import undercroft.session.BackgroundTasks;
import undercroft.session.Workspace;
import undercroft.store.logger.text.TimeFormat;
import undercroft.wording.Messages;

class ImportFormTest {
    private static final Place PLACE = FormSamples.CELLAR.places().get(0);

    @TempDir
    Path folder;

    private Workspace workspace;
    private ImportForm form;

    @BeforeEach
    void open() {
        workspace = FormSamples.workspace(FormSamples.CELLAR);
        form = new ImportForm(Messages.english(), workspace, PLACE, new BackgroundTasks(Runnable::run, Runnable::run));
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("log.csv"), text);
    }

    private static String hours(String dayPattern) {
        StringBuilder text = new StringBuilder("Time,Celsius,Humidity %\n");
        for (int i = 0; i < 20; i++) {
            text.append(String.format(Locale.ROOT, dayPattern + " %02d:00,17.%d,5%d%n", i, i % 10, i % 10));
        }
        return text.toString();
    }

    @Test
    void aPlainFileIsReadAtOnceAndImportedOnWord() throws IOException {
        form.choose(file(hours("2026-06-14")));

        ImportResult result = form.resultProperty().get();
        assertEquals(
                "20 readings, from 14 Jun 2026 to 14 Jun 2026.", result.lines().get(0));
        assertEquals("20 new.", result.lines().get(1));
        assertEquals(
                List.of("Time", "Celsius", "Humidity %"),
                form.previewProperty().get().header());
        assertNull(workspace.getState().temperatures().get(PLACE.id()));

        form.save();

        assertEquals(20, workspace.getState().temperatures().get(PLACE.id()).size());
        assertEquals(
                "Import 20 readings into " + PLACE.name(),
                workspace.undoTextProperty().get());
        workspace.undo();
        assertNull(workspace.getState().temperatures().get(PLACE.id()));
    }

    @Test
    void theSameFileAgainChangesNothing() throws IOException {
        Path file = file(hours("2026-06-14"));
        form.choose(file);
        form.save();
        form.choose(file);

        assertFalse(form.canSave());
        assertTrue(form.resultProperty().get().lines().get(1).contains("already there"));
    }

    @Test
    void anAmbiguousDateWaitsForAnAnswer() throws IOException {
        form.choose(file(hours("05/06/2026")));
        assertNull(form.resultProperty().get());
        Field<?> order = form.fields().get(1);
        assertTrue(order.hintProperty().get().contains("05/06/2026"));

        setFormat(TimeFormat.DAY_FIRST);
        assertTrue(form.resultProperty().get().lines().get(0).contains("5 Jun 2026"));
        setFormat(TimeFormat.MONTH_FIRST);
        assertTrue(form.resultProperty().get().lines().get(0).contains("6 May 2026"));
    }

    @SuppressWarnings("unchecked")
    private void setFormat(TimeFormat format) {
        ((ChoiceField<TimeFormat>) form.fields().get(1)).chosenProperty().set(format);
    }

    @Test
    void whatIsLeftOutIsCountedWithItsReasonAndLine() throws IOException {
        form.choose(file(hours("2026-06-14") + "2026-06-14 21:00,,50\n2026-06-14 22:00,-999.9,50\n"));

        List<String> lines = form.resultProperty().get().lines();
        assertTrue(lines.contains("1 line left out, a time without a value: line 22."), lines::toString);
        assertTrue(lines.stream().anyMatch(line -> line.contains("faulty probe: line 23")), lines::toString);
    }

    @Test
    void readingThatIsCalledOffLeavesNothingBehind() throws IOException {
        Deque<Runnable> waiting = new ArrayDeque<>();
        form = new ImportForm(Messages.english(), workspace, PLACE, new BackgroundTasks(waiting::add, Runnable::run));
        form.choose(file(hours("2026-06-14")));
        waiting.remove().run();
        assertTrue(form.workingProperty().get());

        form.callOff();
        waiting.remove().run();

        assertFalse(form.workingProperty().get());
        assertNull(form.resultProperty().get());
        assertTrue(form.faultProperty().get().contains("called off"));
    }

    @Test
    void aFileThatIsNoLogSaysSoAndLeavesTheFormUsable() throws IOException {
        form.choose(file(""));
        assertFalse(form.faultProperty().get().isEmpty());
        assertFalse(form.canSave());

        form.choose(folder.resolve("missing.csv"));
        assertTrue(form.faultProperty().get().contains("no such file"));

        form.choose(file(hours("2026-06-14")));
        assertEquals("", form.faultProperty().get());
        assertNotNull(form.resultProperty().get());
    }
}
