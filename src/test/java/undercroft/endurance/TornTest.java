package undercroft.endurance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.LoggedTemperatures;
import undercroft.store.Rescue;
import undercroft.wording.Messages;

/**
 * Files cut short, with bits turned, filled with zeros, or another's: either they can be read, or one sentence says why
 * not, the newest good version is offered, and the damaged file is kept.
 */
class TornTest {
    private static final String LOG = """
            time,celsius
            2026-03-29T01:30:00Z,12.375
            2026-03-29T02:00:00Z,-3
            2026-03-29T02:30:00Z,11
            2026-03-29T03:00:00Z,10.5
            """;

    @TempDir
    Path folder;

    private Path json;
    private Path log;
    private byte[] sound;
    private int told;

    @BeforeEach
    void aSmallCellarWithAnEarlierVersion() throws IOException {
        Place loft = new Place("loft", "Loft", new TemperatureSource.Logged(), 3, LightSetting.usual(LightPlace.DARK));
        Cellar cellar = Cellar.empty("Earlier", ZoneOffset.UTC).withPlace(loft);
        try (CellarStore store = CellarStore.create(folder, cellar, Victim.CLOCK, "test")) {
            store.save(cellar.withName("Now"));
        }
        json = folder.resolve("cellar.json");
        sound = Files.readAllBytes(json);
        log = Files.createDirectories(folder.resolve("temperatures")).resolve("loft.csv");
        Files.writeString(log, LOG);
    }

    /** Opens the cellar with its file as given; what cannot be opened must be told and can be brought back. */
    private void openWith(byte[] damaged) throws IOException {
        Files.write(json, damaged);
        try (CellarStore store = CellarStore.open(folder, Victim.CLOCK, "test")) {
            assertFalse(store.cellar().name().isEmpty());
        } catch (InvalidInput fault) {
            told++;
            String sentence = Messages.english().fault(fault);
            assertTrue(sentence.startsWith("cellar.json"), sentence);
            assertFalse(sentence.contains("\n") || sentence.contains("Exception"), sentence);
            assertArrayEquals(damaged, Files.readAllBytes(json), "opening changes nothing");
            Rescue rescue = Rescue.of(folder);
            assertEquals(
                    "Earlier",
                    rescue.restore(rescue.versions().get(0), Victim.CLOCK).name());
            assertArrayEquals(damaged, Files.readAllBytes(aside()), "the damaged file is kept");
            assertEquals("Earlier", CellarStore.read(folder).name());
            Files.delete(aside());
        }
    }

    private Path aside() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.getFileName().toString().startsWith("cellar.json.unreadable-"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void aCellarCutAtAnyByteIsToldAndBroughtBack() throws IOException {
        for (int length = 0; length < sound.length; length++) {
            openWith(Arrays.copyOf(sound, length));
        }
        assertTrue(told >= sound.length - 1, "only the last line break is no loss: " + told);
    }

    @Test
    void zerosAndFilesOfOthersAreToldAndBroughtBack() throws IOException {
        for (int from = 0; from < sound.length; from += 37) {
            byte[] zeroed = sound.clone();
            Arrays.fill(zeroed, from, zeroed.length, (byte) 0);
            openWith(zeroed);
        }
        openWith(new byte[4096]);
        for (String another :
                List.of("PK\u0003\u0004", "%PDF-1.7\n", "<html></html>", LOG, "[1, 2]", "{\"name\": 1}")) {
            openWith(another.getBytes(StandardCharsets.UTF_8));
        }
        assertEquals(sound.length / 37 + 1 + 1 + 6, told);
    }

    @Test
    void aThousandTurnedBits() throws IOException {
        turnBits(500);
    }

    @Test
    @Tag("endurance")
    void tenThousandTurnedBits() throws IOException {
        turnBits(5_000);
        System.out.println("10000 bits turned, " + told + " of the first 5000 told, 0 losses");
    }

    private void turnBits(int ofEach) throws IOException {
        Random random = new Random(20_261_127);
        for (int i = 0; i < ofEach; i++) {
            byte[] turned = sound.clone();
            turned[random.nextInt(turned.length)] ^= (byte) (1 << random.nextInt(8));
            openWith(turned);
        }
        assertTrue(told > ofEach / 4, "most of what is no text of a person is noticed: " + told);
        Files.write(json, sound);
        byte[] whole = LOG.getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < ofEach; i++) {
            byte[] turned = whole.clone();
            turned[random.nextInt(turned.length)] ^= (byte) (1 << random.nextInt(8));
            readLog(turned);
        }
    }

    /** What can be read of the log; the file stays as it is, and goes to the history before it is written again. */
    private LoggedTemperatures readLog(byte[] damaged) throws IOException {
        Files.write(log, damaged);
        try (CellarStore store = CellarStore.open(folder, Victim.CLOCK, "test")) {
            LoggedTemperatures logged = store.temperatures();
            assertArrayEquals(damaged, Files.readAllBytes(log), "reading changes nothing");
            for (InvalidInput fault : logged.faults()) {
                assertTrue(fault.where().startsWith("temperatures/loft.csv"), fault.getMessage());
            }
            return logged;
        }
    }

    @Test
    void aLogCutAtAnyByteGivesTheLinesThatAreWholeAndSaysWhatIsNot() throws IOException {
        byte[] whole = LOG.getBytes(StandardCharsets.UTF_8);
        int heading = "time,celsius\n".length();
        for (int length = 0; length <= whole.length; length++) {
            LoggedTemperatures logged = readLog(Arrays.copyOf(whole, length));
            int lines = length < heading
                    ? 0
                    : (int) new String(whole, 0, length, StandardCharsets.UTF_8)
                                    .lines()
                                    .count()
                            - 1;
            boolean cut = length < heading - 1 || (length > heading && whole[length - 1] != '\n');
            int expected = cut && length > heading ? lines - 1 : lines;
            TimeSeries read = logged.celsius().get("loft");
            assertEquals(expected, read.size(), "lines of the first " + length + " bytes");
            assertEquals(cut, !logged.faults().isEmpty(), "the first " + length + " bytes");
        }
    }

    @Test
    void aDamagedLogIsKeptWhenItIsWrittenAgain() throws IOException {
        List<byte[]> kinds = new ArrayList<>();
        kinds.add(Arrays.copyOf(LOG.getBytes(StandardCharsets.UTF_8), LOG.length() - 4));
        kinds.add((LOG + "\0".repeat(64)).getBytes(StandardCharsets.UTF_8));
        for (byte[] damaged : kinds) {
            Files.write(log, damaged);
            try (CellarStore store = CellarStore.open(folder, Victim.CLOCK, "test")) {
                TimeSeries read = store.temperatures().celsius().get("loft");
                long later = Instant.parse("2026-04-01T00:00:00Z").getEpochSecond();
                store.replaceTemperatures("loft", read.mergedWith(TimeSeries.of(new long[] {later}, new double[] {9})));
            }
            try (Stream<Path> all = Files.list(folder.resolve("history"))) {
                assertTrue(
                        all.filter(file -> file.getFileName().toString().startsWith("loft-"))
                                .anyMatch(file -> Arrays.equals(damaged, bytes(file))),
                        "the file as it was is in the history");
            }
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException unreadable) {
            return new byte[0];
        }
    }
}
