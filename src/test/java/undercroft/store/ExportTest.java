package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.demo.DemoShelf;
import undercroft.outlook.Outlooks;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.report.ShelfCalendar;
import undercroft.report.ShelfReport;
import undercroft.report.sheet.CrateLabels;
import undercroft.report.sheet.LabelPaper;
import undercroft.store.Export.Replacing;
import undercroft.store.disk.FaultyDisk;
import undercroft.store.disk.FaultyDisk.Call;
import undercroft.wording.English;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;
import undercroft.wording.ShelfWords;

/** What leaves the program goes where the user says, over nothing of anybody else's, whole or not at all. */
final class ExportTest {
    private static final ShelfWords WORDS = English.of(Outlooks.of(DemoShelf.cellar(), Map.of(), DemoShelf.NOW));
    private static final Map<String, Consumer<Writer>> REPORT = ShelfReport.of(WORDS, Map.of());

    @TempDir
    private Path scratch;

    private static List<Path> report(Path folder) {
        return Export.ofTexts().folder(folder, REPORT, Replacing.OURS);
    }

    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(each -> !each.equals(folder)).sorted().toList();
        }
    }

    private static String said(Runnable write) {
        InvalidInput fault = assertThrows(InvalidInput.class, write::run);
        return English.of(fault);
    }

    @Test
    void aReportGoesIntoANewFolderAndNothingIsLeftBeside() throws IOException {
        Path out = scratch.resolve("deep/er");
        List<Path> written = report(out);
        assertEquals(REPORT.keySet().stream().map(out::resolve).toList(), written);
        assertEquals(written.size() + 1, all(out).size(), "the files and the folder of series");
        for (String each : REPORT.keySet()) {
            assertEquals(ours(each), Files.readString(out.resolve(each)));
        }
    }

    @Test
    void eachKindOfOurFilesMayBeReplacedByTheNext() {
        report(scratch.resolve("report"));
        report(scratch.resolve("report"));
        Map<String, String> calendars =
                ShelfCalendar.of(WORDS, Instant.parse("2026-11-21T17:00:00Z")).perBatch();
        QuantityFormat metric = QuantityFormat.of(
                Messages.english(), UnitSystem.METRIC, DemoShelf.cellar().zone());
        String labels = CrateLabels.of(
                        WORDS.outlook(),
                        Optional.empty(),
                        "lock-gate-bitter",
                        24,
                        LabelPaper.A4,
                        Instant.parse("2026-11-21T12:00:00Z"),
                        metric)
                .page();
        for (int round = 0; round < 2; round++) {
            Export.ofTexts().texts(scratch.resolve("calendars"), calendars, Replacing.OURS);
            Export.ofTexts().file(scratch.resolve("labels.html"), labels, Replacing.OURS);
        }
    }

    @Test
    void aFileOfAnotherIsLeftAsItIsUnlessTheUserSaysSo() throws IOException {
        Path page = Files.writeString(scratch.resolve("index.html"), "<!DOCTYPE html><html><head><title>mine</title>");
        String said = said(() -> report(scratch));
        assertTrue(said.contains("was not written by this program"), said);
        assertEquals(List.of(page), all(scratch), "nothing of the report");
        Export.ofTexts().folder(scratch, REPORT, Replacing.ANY);
        assertEquals(ours("index.html"), Files.readString(page));
    }

    @Test
    void nothingIsWrittenIntoACellarFolderHoweverItIsReached() throws IOException {
        Path cellar = scratch.resolve("cellar");
        RichCellar.folderWith(cellar, RichCellar.CELLAR);
        byte[] before = Files.readAllBytes(cellar.resolve("cellar.json"));
        Path link = Files.createSymbolicLink(scratch.resolve("elsewhere"), cellar.resolve("history"));
        Files.createDirectories(cellar.resolve("history"));
        List<Path> there = all(cellar);
        for (Path out :
                List.of(cellar, cellar.resolve("new/er"), link, link.resolve("x"), cellar.resolve("../cellar"))) {
            String said = said(() -> Export.ofTexts().folder(out, REPORT, Replacing.ANY));
            assertTrue(said.contains("inside the cellar folder"), said);
        }
        Path json = cellar.resolve("cellar.json");
        assertTrue(said(() -> Export.ofTexts().file(json, "BEGIN:VCALENDAR", Replacing.ANY))
                .contains("inside the cellar folder"));
        assertEquals(there, all(cellar));
        assertEquals(new String(before, java.nio.charset.StandardCharsets.UTF_8), Files.readString(json));
    }

    @Test
    void theFolderNamedMayBeALinkAnEntryInItMayNot() throws IOException {
        Path real = Files.createDirectory(scratch.resolve("real"));
        Path victim = Files.writeString(scratch.resolve("victim"), "mine");
        Path link = Files.createSymbolicLink(scratch.resolve("link"), real);
        report(link);
        assertTrue(Files.exists(real.resolve("index.html")));
        Files.delete(real.resolve("index.html"));
        Files.createSymbolicLink(real.resolve("index.html"), victim);
        assertTrue(
                said(() -> Export.ofTexts().folder(link, REPORT, Replacing.ANY)).contains("link"));
        assertEquals("mine", Files.readString(victim));

        Path trap = Files.createDirectory(scratch.resolve("trap"));
        Path outside = Files.createDirectory(scratch.resolve("outside"));
        Files.createSymbolicLink(trap.resolve("series"), outside);
        assertTrue(
                said(() -> Export.ofTexts().folder(trap, REPORT, Replacing.ANY)).contains("link"));
        assertEquals(List.of(), all(outside));
        assertEquals(List.of(trap.resolve("series")), all(trap));
    }

    @Test
    void aFileNamedThroughALinkIsReplacedWhereItLies() throws IOException {
        Path real = Files.writeString(
                Files.createDirectory(scratch.resolve("synced")).resolve("shelf.ics"), "");
        Path link = Files.createSymbolicLink(scratch.resolve("shelf.ics"), real);
        Export.ofTexts().file(link, "BEGIN:VCALENDAR", Replacing.OURS);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("BEGIN:VCALENDAR", Files.readString(real));
    }

    @Test
    void aFullDiskLeavesNoHalfReportWhicheverWriteFails() throws IOException {
        Path out = scratch.resolve("report");
        FaultyDisk counting = new FaultyDisk("", (call, path) -> false);
        Export.on(counting).folder(scratch.resolve("counted"), REPORT, Replacing.OURS);
        int writes = Collections.frequency(counting.calls(), Call.WRITE);
        assertTrue(writes > REPORT.size(), "a page goes out in pieces");
        for (int failing = 0; failing < writes; failing++) {
            int[] left = {failing};
            FaultyDisk full =
                    new FaultyDisk("No space left on device", (call, path) -> call == Call.WRITE && left[0]-- == 0);
            String said = said(() -> Export.on(full).folder(out, REPORT, Replacing.OURS));
            assertTrue(said.contains("No space left on device"), said);
            assertFalse(Files.exists(out), "write " + failing);
        }
        report(out);
        Map<Path, String> first = texts(out);
        Map<String, Consumer<Writer>> second = new LinkedHashMap<>(REPORT);
        second.replaceAll((name, text) -> text.andThen(ExportTest::endLine));
        for (int failing = 0; failing < writes; failing++) {
            int[] left = {failing};
            FaultyDisk full =
                    new FaultyDisk("No space left on device", (call, path) -> call == Call.WRITE && left[0]-- == 0);
            said(() -> Export.on(full).folder(out, second, Replacing.OURS));
            assertEquals(first, texts(out), "write " + failing);
        }
    }

    private static String ours(String file) {
        StringWriter text = new StringWriter();
        REPORT.get(file).accept(text);
        return text.toString();
    }

    private static void endLine(Writer text) {
        try {
            text.write("\n");
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Map<Path, String> texts(Path folder) throws IOException {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (Path each : all(folder)) {
            if (Files.isRegularFile(each)) {
                texts.put(each, Files.readString(each));
            }
        }
        return texts;
    }

    @Test
    void aPrivateFolderIsNewItsOwnersAloneAndUnforeseeable() throws IOException {
        Path first = Export.ofTexts().privateFolder(scratch);
        Path second = Export.ofTexts().privateFolder(scratch);
        assertFalse(first.equals(second));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(first)));
    }

    @Test
    void aFileInThePlaceOfTheFolderIsRefusedAndKept() throws IOException {
        Path file = Files.writeString(scratch.resolve("notes.txt"), "mine");
        for (Path out : List.of(file, file.resolve("below"))) {
            said(() -> report(out));
        }
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void aFolderInThePlaceOfAFileIsRefusedWithoutDebris() throws IOException {
        Files.createDirectories(scratch.resolve("report.json/inside"));
        said(() -> report(scratch));
        assertEquals(List.of(scratch.resolve("report.json"), scratch.resolve("report.json/inside")), all(scratch));
    }

    @Test
    void whatADeadExportLeftGoesWithTheNextOneAnHourLaterAndNothingElse() throws IOException {
        List<Path> dead = List.of(
                scratch.resolve("index.html.0123456789abcdef.tmp"),
                scratch.resolve("report.json.0123456789abcdef.tmp"));
        Path living = scratch.resolve("index.html.00000000000000aa.tmp");
        Path another = scratch.resolve("thesis.html.0123456789abcdef.tmp");
        for (Path each : List.of(dead.get(0), dead.get(1), living, another)) {
            Files.writeString(each, "half a fi");
            Files.setLastModifiedTime(each, FileTime.from(Instant.now().minus(Duration.ofMinutes(61))));
        }
        Files.setLastModifiedTime(living, FileTime.from(Instant.now().minus(Duration.ofMinutes(50))));
        report(scratch);
        assertFalse(Files.exists(dead.get(0)) || Files.exists(dead.get(1)));
        assertTrue(Files.exists(living) && Files.exists(another));
    }
}
