package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.ZoneOffset;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.series.TimeSeries;

class FollowedFileTest {
    private static final String HEAD = "time,celsius\n2024-01-01 00:00,10\n";

    @TempDir
    Path folder;

    private Path file;
    private TimeSeries seen = TimeSeries.empty();
    private int handedOut;

    @BeforeEach
    void aFileThatHasBegun() throws IOException {
        file = folder.resolve("shelf.csv");
        Files.writeString(file, HEAD);
    }

    private Choices choices() {
        return Choices.from(LoggerFile.inspect(file, ZoneOffset.UTC));
    }

    private void append(String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }

    private void take(TimeSeries samples) {
        handedOut += samples.size();
        seen = ImportMerge.of(seen, samples).series();
    }

    private static TimeSeries hours(int count) {
        TimeSeries.Builder series = new TimeSeries.Builder();
        for (int i = 0; i < count; i++) {
            series.add(1_704_067_200L + i * 3600L, 10 + i);
        }
        return series.build();
    }

    @Test
    void onlyWhatIsNewIsHandedOut() throws IOException {
        try (GrowingFile growing = new GrowingFile(file, choices())) {
            growing.readNew(this::take);
            append("2024-01-01 01:00,11\n2024-01-01 02:00,12\n");
            growing.readNew(this::take);
            growing.readNew(this::take);
        }
        assertEquals(hours(3), seen);
        assertEquals(3, handedOut);
    }

    @Test
    void aLineHalfWrittenWaitsForItsEnd() throws IOException {
        try (GrowingFile growing = new GrowingFile(file, choices())) {
            append("2024-01-01 01:00,1");
            growing.readNew(this::take);
            assertEquals(hours(1), seen);
            append("1\n");
            growing.readNew(this::take);
        }
        assertEquals(hours(2), seen);
    }

    @Test
    void aRotatedFilesLastLinesAreStillRead() throws IOException {
        try (GrowingFile growing = new GrowingFile(file, choices())) {
            growing.readNew(this::take);
            append("2024-01-01 01:00,11\n");
            Files.move(file, folder.resolve("shelf.old"));
            Files.writeString(file, "2024-01-01 02:00,12\n");
            growing.readNew(this::take);
        }
        assertEquals(hours(3), seen);
        assertEquals(3, handedOut);
    }

    @Test
    void aFileAwayForAWhileIsReadWhenItIsBack() throws IOException {
        try (GrowingFile growing = new GrowingFile(file, choices())) {
            growing.readNew(this::take);
            Path aside = Files.move(file, folder.resolve("aside.csv"));
            growing.readNew(this::take);
            Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
            append("2024-01-01 01:00,11\n");
            growing.readNew(this::take);
        }
        assertEquals(hours(2), seen);
    }

    @Test
    void aFileCutShortIsReadAnew() throws IOException {
        append("2024-01-01 01:00,11\n");
        try (GrowingFile growing = new GrowingFile(file, choices())) {
            growing.readNew(this::take);
            Files.writeString(file, "2024-01-01 02:00,12\n");
            growing.readNew(this::take);
        }
        assertEquals(hours(3), seen);
    }

    @Test
    void aFileWrittenAnewAndLongerIsNoticed() throws IOException {
        try (GrowingFile growing = new GrowingFile(file, choices())) {
            growing.readNew(this::take);
            Files.writeString(file, "time,celsius\n2024-01-01 01:00,11\n2024-01-01 02:00,12\n");
            growing.readNew(this::take);
        }
        assertEquals(hours(3), seen);
    }

    @Test
    void sixteenBitCharactersAreFollowedToo() throws IOException {
        for (Charset wide : new Charset[] {StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE}) {
            seen = TimeSeries.empty();
            Files.write(file, ("\ufeff" + HEAD).getBytes(wide));
            try (GrowingFile growing = new GrowingFile(file, choices())) {
                growing.readNew(this::take);
                byte[] more = "2024-01-01 01:00,11\n".getBytes(wide);
                Files.write(file, java.util.Arrays.copyOf(more, more.length - 1), StandardOpenOption.APPEND);
                growing.readNew(this::take);
                assertEquals(hours(1), seen);
                Files.write(file, new byte[] {more[more.length - 1]}, StandardOpenOption.APPEND);
                growing.readNew(this::take);
            }
            assertEquals(hours(2), seen);
        }
    }

    @Test
    void theRepeatedHourIsToldApartAlthoughItsLinesComeOneByOne() throws IOException {
        Files.writeString(file, "2023-10-29 01:30,1\n");
        Choices choices = choices().withZone(Logs.BERLIN);
        try (GrowingFile growing = new GrowingFile(file, choices)) {
            growing.readNew(this::take);
            for (String line : new String[] {"02:00,2", "02:30,3", "02:00,4", "02:30,5", "03:00,6"}) {
                append("2023-10-29 " + line + "\n");
                growing.readNew(this::take);
            }
        }
        assertEquals(
                Logs.series(
                        "2023-10-28T23:30:00Z",
                        1,
                        "2023-10-29T00:00:00Z",
                        2,
                        "2023-10-29T00:30:00Z",
                        3,
                        "2023-10-29T01:00:00Z",
                        4,
                        "2023-10-29T01:30:00Z",
                        5,
                        "2023-10-29T02:00:00Z",
                        6),
                seen);
    }

    @Test
    void aFollowerTellsOfNewLinesUntilItIsClosed() throws Exception {
        BlockingQueue<TimeSeries> told = new LinkedBlockingQueue<>();
        try (FollowedFile followed = FollowedFile.follow(file, choices(), told::add)) {
            assertNotNull(followed);
            assertEquals(hours(1), told.poll(30, TimeUnit.SECONDS));
            append("2024-01-01 01:00,11\n");
            assertEquals(hours(2).between(1_704_067_201L, Long.MAX_VALUE), told.poll(30, TimeUnit.SECONDS));
        }
        append("2024-01-01 02:00,12\n");
        assertNull(told.poll());
    }
}
