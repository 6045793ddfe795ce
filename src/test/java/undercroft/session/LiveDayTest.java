package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.SpellSamples;
import undercroft.quantity.InvalidInput;
import undercroft.store.CellarStore;

/**
 * A sensor that says something every second for a day, with a clock that is turned by hand; each hour another of two cellars is
 * open. Nothing of it is lost, no cellar that was left is held on to, and the heap stays flat.
 */
class LiveDayTest {
    private static final Instant BEGINS = Instant.parse("2026-05-01T00:00:00Z");
    private static final int SECONDS = 3600;

    /** The logs themselves grow: 3,600 samples of 16 bytes in an hour, as they are kept, merged and remembered. */
    private static final double MOST_BYTES_AN_HOUR = 1 << 20;

    @TempDir
    Path folder;

    private final HandClock clock = new HandClock(BEGINS);
    private final HandWork work = new HandWork();
    private final List<InvalidInput> faults = new ArrayList<>();
    private final List<WeakReference<Object>> left = new ArrayList<>();

    @Test
    void twoHoursAreCompleteAndNothingIsHeldOnTo() throws IOException {
        live(2);
    }

    @Test
    @Tag("endurance")
    void aDayIsCompleteAndTheHeapStaysFlat() throws IOException {
        List<Long> heap = live(24);
        // The first hours fill caches that stay.
        int from = 6;
        double slope = slope(heap.subList(from, heap.size()));
        System.out.printf(Locale.ROOT, "heap after each hour, kB: %s; %.0f kB an hour%n", heap, slope / 1024);
        assertTrue(slope < MOST_BYTES_AN_HOUR, slope + " bytes an hour");
    }

    private List<Long> live(int hours) throws IOException {
        Path[] folders = {folder.resolve("one"), folder.resolve("two")};
        for (Path each : folders) {
            Cellar cellar = SpellSamples.cellar(20, "room");
            CellarStore.create(each, cellar, clock, "test").close();
            Files.createDirectories(each.resolve("incoming").resolve("room"));
        }
        List<Long> heap = new ArrayList<>();
        for (int hour = 0; hour < hours; hour++) {
            hour(folders[hour % 2]);
            heap.add(used());
        }
        for (int i = 0; i < folders.length; i++) {
            int heard = CellarStore.temperatures(folders[i], CellarStore.read(folders[i]))
                    .celsius()
                    .get("room")
                    .size();
            assertEquals(SECONDS * ((hours + 1 - i) / 2), heard, "samples of cellar " + i);
        }
        long kept = left.stream().filter(one -> one.get() != null).count();
        assertEquals(0, kept, "cellars that were left and are held on to");
        assertEquals(List.of(), faults);
        return heap;
    }

    /** One cellar is open for an hour; each minute a file with sixty samples is put into its folder. */
    private void hour(Path cellarFolder) throws IOException {
        CellarStore store = CellarStore.open(cellarFolder, clock, "test");
        OpenCellar cellar = OpenCellar.of(store, clock, work.threads(), Optional.empty(), faults::add);
        left.add(new WeakReference<>(cellar));
        Path incoming = cellarFolder.resolve("incoming").resolve("room");
        for (int minute = 0; minute < 60; minute++) {
            StringBuilder lines = new StringBuilder("time,celsius\n");
            for (int second = 0; second < 60; second++) {
                Instant at = clock.instant().plusSeconds(second);
                lines.append(at).append(',').append(18 + (second % 7) / 10.0).append('\n');
            }
            Path partly = cellarFolder.resolve("partly.csv");
            Files.writeString(partly, lines);
            clock.goOn(Duration.ofMinutes(1));
            Files.move(partly, incoming.resolve("sensor-" + clock.instant().getEpochSecond() + ".csv"));
            work.beat();
        }
        CellarOutlook outlook = cellar.forecasts().outlookProperty().get();
        assertTrue(!outlook.at().isBefore(clock.instant().minusSeconds(600)), "the forecast follows");
        cellar.close();
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1024;
    }

    /** Bytes an hour by least squares. */
    private static double slope(List<Long> kilobytes) {
        int n = kilobytes.size();
        double meanX = (n - 1) / 2.0;
        double meanY = kilobytes.stream().mapToLong(Long::longValue).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < n; i++) {
            above += (i - meanX) * (kilobytes.get(i) - meanY);
            below += (i - meanX) * (i - meanX);
        }
        return 1024 * above / below;
    }
}
