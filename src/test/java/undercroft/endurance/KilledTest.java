package undercroft.endurance;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.endurance.Victim.Work;
import undercroft.series.TimeSeries;
import undercroft.session.IncomingFiles;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.store.Export.Replacing;

/**
 * A program is killed (SIGKILL on POSIX) at random moments while it saves, imports, upgrades and exports at once. After each the
 * kill the last piece of each it had said to be done, or a later one, is there whole, the folder is sound, and once somebody works in it
 * again nothing is left of the dead one.
 */
class KilledTest {
    private static final int MOST_DONE = 16;
    private static final int LONGEST_MICROSECONDS = 20_000;
    private static final int UPGRADES_A_ROUND = 60;
    private static final int REPORT_PAGES = 4;

    @TempDir
    Path scratch;

    private final Map<Work, Integer> lastDone = new EnumMap<>(Work.class);
    private final Random random = new Random(20_261_127);
    private int amidst;
    private int half;

    @Test
    void fiftyPiecesOfWorkCutOffLoseNothing() throws IOException, InterruptedException {
        kill(13);
    }

    @Test
    @Tag("endurance")
    void fourThousandPiecesOfWorkCutOffLoseNothing() throws IOException, InterruptedException {
        kill(1_000);
        System.out.println("1000 kills, 4000 pieces of work cut off: " + amidst + " of them done and not yet said, "
                + half + " files half written, 0 losses");
    }

    private void kill(int rounds) throws IOException, InterruptedException {
        for (Work work : Work.values()) {
            lastDone.put(work, 0);
        }
        Place loft = new Place(
                Victim.PLACE, "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK));
        for (Work work : List.of(Work.SAVE, Work.IMPORT)) {
            Cellar cellar = Cellar.empty("New", ZoneOffset.UTC).withPlace(loft);
            CellarStore.create(folderOf(work), cellar, Victim.CLOCK, "test").close();
        }
        Export.ofTexts().texts(folderOf(Work.REPORT), Victim.marked(report(), 0), Replacing.OURS);
        for (int round = 0; round < rounds; round++) {
            putOldCellars(lastDone.get(Work.UPGRADE) + 1);
            Map<Work, Integer> done = killed();
            letAnHourGoBy();
            lastDone.put(Work.SAVE, saved(done.get(Work.SAVE)));
            lastDone.put(Work.IMPORT, imported(done.get(Work.IMPORT)));
            lastDone.put(Work.UPGRADE, upgraded(lastDone.get(Work.UPGRADE) + 1, done.get(Work.UPGRADE)));
            lastDone.put(Work.REPORT, reported(done.get(Work.REPORT)));
            assertEquals(List.of(), halfFiles(), "nothing is left of the dead program");
        }
    }

    private Path folderOf(Work work) {
        return scratch.resolve(work.name());
    }

    /** As long as a page and a table of a real one, and as ours. */
    private static Map<String, String> report() {
        Map<String, String> texts = new TreeMap<>();
        texts.put(
                "index.html",
                "<!DOCTYPE html>\n<html><head><meta name=\"generator\" content=\"Undercroft\"></head>"
                        + "<p>page</p>\n".repeat(5_000));
        texts.put("report.json", "{\"schema\": 1, \"at\": \"2026\", \"cellar\": 1}" + " ".repeat(100_000));
        for (int i = 0; i < REPORT_PAGES; i++) {
            texts.put("series/ale-" + i + ".csv", "time_utc,lot,carbonation_low_vol,\n" + "1,2,3\n".repeat(5_000));
        }
        return texts;
    }

    /** Runs the program, kills it at some moment, and returns the numbers of the last pieces it said to be done. */
    private Map<Work, Integer> killed() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx128m",
                "-cp",
                System.getProperty("java.class.path"),
                Victim.class.getName(),
                scratch.toString()));
        lastDone.values().forEach(done -> command.add(String.valueOf(done + 1)));
        Process process = new ProcessBuilder(command)
                .redirectError(scratch.resolve("trouble").toFile())
                .start();
        Map<Work, Integer> done = new EnumMap<>(lastDone);
        try (BufferedReader said = new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8))) {
            int wait = 1 + random.nextInt(MOST_DONE);
            for (int i = 0; i < wait; i++) {
                String line = said.readLine();
                assertTrue(line != null, this::trouble);
                note(line, done);
            }
            LockSupport.parkNanos(TimeUnit.MICROSECONDS.toNanos(random.nextInt(LONGEST_MICROSECONDS)));
            // Not Process.destroyForcibly, which throws away what was said last.
            assertTrue(process.toHandle().destroyForcibly());
            process.waitFor();
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                note(line, done);
            }
        }
        assertEquals("", trouble());
        return done;
    }

    /** Half a line was not said. */
    private static void note(String line, Map<Work, Integer> done) {
        Matcher one = Pattern.compile("([A-Z]+) (\\d+)").matcher(line);
        if (one.matches()) {
            done.merge(Work.valueOf(one.group(1)), Integer.parseInt(one.group(2)), Math::max);
        }
    }

    private String trouble() {
        try {
            return Files.readString(scratch.resolve("trouble"));
        } catch (IOException none) {
            return "";
        }
    }

    private List<Path> halfFiles() throws IOException {
        try (Stream<Path> all = Files.walk(scratch)) {
            return all.filter(file -> file.toString().endsWith(".tmp")).toList();
        }
    }

    /** What lies where no lock tells whether its writer lives is taken for dead when it is an hour old. */
    private void letAnHourGoBy() throws IOException {
        for (Path file : halfFiles()) {
            Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
            half++;
        }
    }

    private void assertDone(int there, int done) {
        assertTrue(there == done || there == done + 1, () -> done + " was said to be done, " + there + " is there");
        if (there > done) {
            amidst++;
        }
    }

    private static void assertSound(Path cellar) {
        assertEquals(List.of(), CellarStore.faults(cellar));
    }

    private int saved(int done) {
        Path cellar = folderOf(Work.SAVE);
        assertSound(cellar);
        try (CellarStore store = Victim.open(cellar)) {
            int there = Victim.numberOf(store.cellar());
            assertDone(there, done);
            return there;
        }
    }

    private int imported(int done) {
        Path cellar = folderOf(Work.IMPORT);
        assertSound(cellar);
        try (CellarStore store = Victim.open(cellar)) {
            IncomingFiles.takeInAlone(store);
            TimeSeries there = store.temperatures(Victim.PLACE);
            assertDone(there.size(), done);
            for (int n = 1; n <= there.size(); n++) {
                assertEquals(Victim.sample(n).valueAt(0), there.valueAt(there.indexAtOrBefore(600L * n)));
            }
            if (done > 0) {
                assertEquals(
                        new TemperatureSource.Logged(),
                        store.cellar().place(Victim.PLACE).temperature());
            }
            return there.size();
        } finally {
            assertSound(cellar);
        }
    }

    private static byte[] oldCellar() throws IOException {
        try (InputStream in = CellarStore.class.getResourceAsStream("cellar-schema-1.json")) {
            return in.readAllBytes();
        }
    }

    private void putOldCellars(int first) throws IOException {
        for (int n = first; n < first + UPGRADES_A_ROUND; n++) {
            Path cellar = Files.createDirectories(folderOf(Work.UPGRADE).resolve("" + n));
            Files.write(cellar.resolve("cellar.json"), oldCellar());
        }
    }

    private int upgraded(int first, int done) throws IOException {
        int there = done;
        for (int n = first; n <= done + 1; n++) {
            Path cellar = folderOf(Work.UPGRADE).resolve("" + n);
            byte[] file = Files.readAllBytes(cellar.resolve("cellar.json"));
            boolean isOld = Arrays.equals(oldCellar(), file);
            assertTrue(!isOld || n > done, "what was said to be upgraded is");
            try (CellarStore store = Victim.open(cellar)) {
                assertEquals(isOld ? 0 : n, Victim.numberOf(store.cellar()));
            }
            if (!isOld) {
                assertArrayEquals(oldCellar(), backup(cellar), "as it was before, for good");
                there = n;
            }
        }
        assertDone(there, done);
        return done + UPGRADES_A_ROUND;
    }

    private static byte[] backup(Path cellar) throws IOException {
        try (Stream<Path> all = Files.list(cellar.resolve("history"))) {
            return Files.readAllBytes(
                    all.filter(file -> file.getFileName().toString().startsWith("cellar-schema-1-"))
                            .findFirst()
                            .orElseThrow());
        }
    }

    private int reported(int done) throws IOException {
        Path folder = folderOf(Work.REPORT);
        Map<String, String> expected = report();
        assertEquals(expected, Victim.texts(folder), "every file is whole");
        boolean later = false;
        for (String name : expected.keySet()) {
            String text = Files.readString(folder.resolve(name));
            int mark = Integer.parseInt(text.substring(text.lastIndexOf("\nmark ") + "\nmark ".length())
                    .strip());
            later |= mark > done;
            assertTrue(mark == done || mark == done + 1, () -> name + " is of " + mark + ", not " + done);
        }
        if (later) {
            amidst++;
        }
        Export.ofTexts().texts(folder, Victim.marked(expected, done + 1), Replacing.OURS);
        return done + 1;
    }
}
