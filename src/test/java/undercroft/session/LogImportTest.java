package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.UnitSystem;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.logger.Choices;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.Progress;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

class LogImportTest {
    private static final TemperatureSource GUESS = new TemperatureSource.FixedGuess(18, 2);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private final Cellar cellar = Cellar.empty("Test", ZoneOffset.UTC)
            .withPlace(new Place("barn", "Barn", GUESS, 3, LightSetting.usual(LightPlace.DARK)));

    private ImportedLog log() throws IOException {
        Path file = Files.writeString(
                folder.resolve("log.csv"), "time,celsius\n2026-05-01 00:00,10\n2026-05-01 01:00,11\n");
        return LoggerFile.read(file, Choices.from(LoggerFile.inspect(file, ZoneOffset.UTC)), Progress.NONE);
    }

    private static List<String> lines(LogImport done) {
        return done.lines(QuantityFormat.of(Messages.english(), UnitSystem.METRIC, ZoneOffset.UTC));
    }

    @Test
    void aPlaceWhoseTemperatureWasAGuessTakesTheLogAsItsSourceAndSaysSo() throws IOException {
        Workspace workspace = SampleWorkspace.of(cellar);
        LogImport done = LogImport.of(workspace.getCellar(), "barn", TimeSeries.empty(), log());
        assertTrue(lines(done).get(1).contains("guess"), lines(done)::toString);
        done.into(workspace, "import");
        assertEquals(
                new TemperatureSource.Logged(),
                workspace.getCellar().place("barn").temperature());
        workspace.undo();
        assertEquals(GUESS, workspace.getCellar().place("barn").temperature());
    }

    @Test
    void readingsThatWereThereWhileThePlaceBelievedAGuessAreBelievedNow() throws IOException {
        Workspace workspace = SampleWorkspace.of(cellar);
        LogImport.of(workspace.getCellar(), "barn", TimeSeries.empty(), log()).into(workspace, "import");
        TimeSeries known = workspace.getState().temperatures().get("barn");
        workspace.change(
                "guess again", each -> each.withPlace(each.place("barn").withTemperature(GUESS)));
        LogImport again = LogImport.of(workspace.getCellar(), "barn", known, log());
        assertTrue(again.merge().changesNothing());
        assertFalse(again.changesNothing());
        again.into(workspace, "import");
        assertEquals(
                new TemperatureSource.Logged(),
                workspace.getCellar().place("barn").temperature());
    }

    @Test
    void theFolderIsLeftAsTheWindowWouldLeaveIt() throws IOException {
        Path shelf = folder.resolve("shelf");
        try (CellarStore store = CellarStore.create(shelf, cellar, CLOCK, "test")) {
            LogImport.of(store.cellar(), "barn", store.temperatures("barn"), log())
                    .into(new FolderRepository(store));
        }
        Cellar read = CellarStore.read(shelf);
        assertEquals(new TemperatureSource.Logged(), read.place("barn").temperature());
        assertEquals(
                2, CellarStore.temperatures(shelf, read).celsius().get("barn").size());
    }
}
