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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.store.CellarStore;

class ImportCommandTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-22T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path scratch;

    @Test
    void aPlaceThatWasGuessedTakesTheImportedLogAsItsSource() throws IOException {
        Path cellar = scratch.resolve("cellar");
        Place loft = new Place(
                "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK));
        CellarStore.create(cellar, Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft), CLOCK, "test")
                .close();
        Path log = scratch.resolve("logger.csv");
        Files.writeString(log, "time;temperature °C\n2026-11-21 20:00;7,4\n2026-11-21 20:30;7,5\n");
        Terminal terminal =
                Terminal.run(scratch, "import", cellar.toString(), log.toString(), "--place", "loft", "--json");
        assertTrue(
                new ObjectMapper().readTree(terminal.out()).get("becameSource").asBoolean(), terminal.out());
        assertEquals(
                new TemperatureSource.Logged(),
                CellarStore.read(cellar).place("loft").temperature());
    }
}
