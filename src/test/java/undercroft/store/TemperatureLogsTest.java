package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.wording.English;

/** Temperature files that other programs write to as well. */
class TemperatureLogsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final TimeSeries FIRST = series(0, 10, 600, 11);

    @TempDir
    Path folder;

    private Path loft;

    @BeforeEach
    void fill() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        loft = folder.resolve("temperatures/loft.csv");
        try (CellarStore store = open()) {
            store.replaceTemperatures("loft", FIRST);
        }
    }

    private CellarStore open() {
        return CellarStore.open(folder, CLOCK, "test");
    }

    private static TimeSeries series(double... timesAndValues) {
        TimeSeries.Builder builder = new TimeSeries.Builder();
        for (int i = 0; i < timesAndValues.length; i += 2) {
            builder.add((long) timesAndValues[i], timesAndValues[i + 1]);
        }
        return builder.build();
    }

    private void append(String line) throws IOException {
        Files.writeString(loft, line + "\n", StandardOpenOption.APPEND);
    }

    private List<String> history() throws IOException {
        if (!Files.exists(folder.resolve("history"))) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder.resolve("history"))) {
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("loft-"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aLineAnotherProgramAppendedOutlivesTheNextImport() throws IOException {
        try (CellarStore store = open()) {
            TimeSeries known = store.temperatures().celsius().get("loft");
            append("1970-01-01T00:20:00Z,12");
            TimeSeries saved = store.replaceTemperatures("loft", known.mergedWith(series(1_800, 13)));
            assertEquals(series(0, 10, 600, 11, 1_200, 12, 1_800, 13), saved);
        }
        try (CellarStore store = open()) {
            assertEquals(series(0, 10, 600, 11, 1_200, 12, 1_800, 13), store.temperatures("loft"));
        }
    }

    @Test
    void whatCameInStaysInWhatAWindowThatHasNotSeenItSavesNextAndEvenAfter() {
        try (CellarStore store = open()) {
            TimeSeries shown = store.temperatures().celsius().get("loft");
            store.merge("loft", series(1_200, 12));
            TimeSeries typed = shown.mergedWith(series(1_800, 13));
            assertEquals(series(0, 10, 600, 11, 1_200, 12, 1_800, 13), store.replaceTemperatures("loft", typed));
            TimeSeries typedMore = typed.mergedWith(series(2_400, 14));
            TimeSeries all = series(0, 10, 600, 11, 1_200, 12, 1_800, 13, 2_400, 14);
            assertEquals(all, store.replaceTemperatures("loft", typedMore), "still not seen");
            assertEquals(all, store.replaceTemperatures("loft", all), "seen");
            TimeSeries without = series(0, 10, 600, 11, 1_800, 13, 2_400, 14);
            assertEquals(without, store.replaceTemperatures("loft", without), "and may be taken away from then on");
        }
    }

    @Test
    void aValueAnotherProgramCorrectedStaysUnlessItWasChangedHereToo() throws IOException {
        try (CellarStore store = open()) {
            store.temperatures();
            Files.writeString(loft, Files.readString(loft).replace(",10", ",9").replace(",11", ",12"));
            TimeSeries saved = store.replaceTemperatures("loft", series(0, 10, 600, 15));
            assertEquals(series(0, 9, 600, 15), saved);
        }
    }

    @Test
    void linesTakenAwayHereStayAway() {
        try (CellarStore store = open()) {
            store.temperatures();
            assertEquals(series(600, 11), store.replaceTemperatures("loft", series(600, 11)));
            assertEquals(series(600, 11), store.temperatures("loft"));
        }
    }

    @Test
    void aFileReplacedByForeignTextIsLeftAloneAndToldUntilItIsMoved() throws IOException {
        String foreign = "Dear diary,\ntoday I bottled a stout.\n";
        try (CellarStore store = open()) {
            store.temperatures();
            Files.writeString(loft, foreign);
            InvalidInput fault =
                    assertThrows(InvalidInput.class, () -> store.replaceTemperatures("loft", series(0, 10, 600, 12)));
            assertTrue(
                    English.placed(fault).contains("another program put something else there"), English.placed(fault));
            assertEquals(foreign, Files.readString(loft));
            Files.move(loft, folder.resolve("diary.txt"));
            store.replaceTemperatures("loft", series(0, 10, 600, 12));
        }
        assertEquals(foreign, Files.readString(folder.resolve("diary.txt")));
        try (CellarStore store = open()) {
            assertEquals(series(0, 10, 600, 12), store.temperatures("loft"));
        }
    }

    @Test
    void anImpossibleLineIsToldByFileAndLineAndTheRestIsUsed() throws IOException {
        append("1970-01-01T00:20:00Z,999");
        append("1970-01-01T00:30:00Z,13");
        try (CellarStore store = open()) {
            LoggedTemperatures all = store.temperatures();
            assertEquals(series(0, 10, 600, 11, 1_800, 13), all.celsius().get("loft"));
            assertEquals(1, all.faults().size());
            assertEquals(
                    "temperatures/loft.csv: line 4: 999 is outside what is possible here; give -60 to 100 °C",
                    English.placed(all.faults().get(0)));
        }
    }

    @Test
    void aDamagedHeadingDoesNotHideTheLines() throws IOException {
        Files.writeString(loft, Files.readString(loft).replace("time,celsius", "tame,celsius"));
        try (CellarStore store = open()) {
            assertEquals(FIRST, store.temperatures("loft"));
        }
    }

    @Test
    void aRewrittenLogLeavesTheOneBeforeInTheHistoryAnAppendedOneDoesNot() throws IOException {
        String before = Files.readString(loft);
        try (CellarStore store = open()) {
            store.merge("loft", series(1_200, 12));
            assertEquals(List.of(), history(), "lines were only added at the end");
            before = Files.readString(loft);
            store.merge("loft", series(300, 10.5));
        }
        assertEquals(List.of("loft-2026-03-01T12-00-00-000Z.csv"), history());
        assertEquals(before, Files.readString(folder.resolve("history/loft-2026-03-01T12-00-00-000Z.csv")));
    }

    @Test
    void linesThatCannotBeReadAreInTheHistoryOnceTheLogIsWrittenAgain() throws IOException {
        append("rubbish, but mine");
        try (CellarStore store = open()) {
            store.merge("loft", series(1_200, 12));
        }
        assertEquals(1, history().size());
        assertTrue(
                Files.readString(folder.resolve("history/" + history().get(0))).contains("rubbish, but mine"));
        assertFalse(Files.readString(loft).contains("rubbish"));
    }

    @Test
    void anEmptiedFileIsWrittenAgain() throws IOException {
        try (CellarStore store = open()) {
            store.temperatures();
            Files.write(loft, new byte[200]);
            assertEquals(FIRST, store.replaceTemperatures("loft", FIRST), "a file of zeros, as a power cut leaves it");
        }
    }

    @Test
    void aDeletedFileIsWrittenAgain() throws IOException {
        try (CellarStore store = open()) {
            store.temperatures();
            Files.delete(loft);
            assertEquals(FIRST, store.replaceTemperatures("loft", FIRST));
        }
    }

    @Test
    void aFolderThatCannotBeListedIsNotToldAsNothingLogged() throws IOException {
        Files.delete(loft);
        Files.delete(folder.resolve("temperatures"));
        Files.writeString(folder.resolve("temperatures"), "a file in the place of the folder");
        try (CellarStore store = open()) {
            assertEquals(1, store.temperatures().faults().size());
            assertThrows(InvalidInput.class, () -> store.replaceTemperatures("loft", FIRST));
        }
        assertEquals(
                1, CellarStore.temperatures(folder, RichCellar.CELLAR).faults().size());
        assertEquals("temperatures", CellarStore.faults(folder).get(0).where());
    }
}
