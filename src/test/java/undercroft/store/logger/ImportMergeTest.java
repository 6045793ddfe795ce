package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import undercroft.series.TimeSeries;

class ImportMergeTest {
    private static final TimeSeries OLD =
            Logs.series("2024-01-01T00:00:00Z", 10, "2024-01-01T01:00:00Z", 11, "2024-01-01T03:00:00Z", 13);

    @Test
    void theSameImportTwiceChangesNothing() {
        ImportMerge again = ImportMerge.of(OLD, OLD);
        assertSame(OLD, again.series());
        assertEquals(3, again.alreadyThere());
    }

    @Test
    void aDifferentValueTakesThePlaceOfTheOldOneAndIsReported() {
        TimeSeries imported = Logs.series("2024-01-01T01:00:00Z", 11.5, "2024-01-01T02:00:00Z", 12);
        ImportMerge merge = ImportMerge.of(OLD, imported);
        assertEquals(
                Logs.series(
                        "2024-01-01T00:00:00Z",
                        10,
                        "2024-01-01T01:00:00Z",
                        11.5,
                        "2024-01-01T02:00:00Z",
                        12,
                        "2024-01-01T03:00:00Z",
                        13),
                merge.series());
        assertEquals(1, merge.added());
        assertEquals(1, merge.replaced());
        assertEquals(Instant.parse("2024-01-01T01:00:00Z").getEpochSecond(), merge.firstReplaced());
        assertEquals(0.5, merge.largestChange(), 1e-12);
    }

    @Test
    void aRoundedCopyOfAValueIsTheSameValue() {
        ImportMerge merge = ImportMerge.of(OLD, Logs.series("2024-01-01T01:00:00Z", 11.0004));
        assertSame(OLD, merge.series());
    }

    /** Cuts one log into overlapping pieces with lines shuffled and doubled, and imports them in any order. */
    @Property(tries = 200, seed = "20260104")
    void anyInterleavingOfImportsGivesOneSeries(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 120) int samples,
            @ForAll @IntRange(max = 6) int extra) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        TimeSeries.Builder whole = new TimeSeries.Builder();
        Instant start = Instant.parse("2024-01-31T22:00:00Z");
        for (int i = 0; i < samples; i++) {
            Instant at = start.plusSeconds(i * 600L);
            double value = Math.round(100 * (12 + 3 * random.nextGaussian())) / 100.0;
            lines.add(at + "," + value);
            whole.add(at.getEpochSecond(), value);
        }
        List<List<String>> files = new ArrayList<>();
        for (int from = 0; from < samples; ) {
            int until = Math.min(samples, from + 1 + random.nextInt(40));
            files.add(new ArrayList<>(lines.subList(Math.max(0, from - random.nextInt(5)), until)));
            from = until;
        }
        for (int i = 0; i < extra; i++) {
            files.add(new ArrayList<>(files.get(random.nextInt(files.size()))));
        }
        Collections.shuffle(files, random);
        TimeSeries series = TimeSeries.empty();
        for (List<String> file : files) {
            file.add(file.get(random.nextInt(file.size())));
            Collections.shuffle(file, random);
            series = ImportMerge.of(series, Logs.read(String.join("\n", file)).celsius())
                    .series();
        }
        assertEquals(whole.build(), series);
    }
}
