package undercroft.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import undercroft.series.TimeSeries;
import undercroft.store.logger.Choices;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.Progress;

/**
 * Five years of minutes, 2.6 million lines, against a plain line-by-line reader with {@code String.split} and {@code
 * LocalDateTime.parse}, and against reading the bytes alone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class ImportBench {
    private static final int LINES = 2_628_000;
    private Path file;

    @Setup
    public void write() throws IOException {
        file = Files.createTempFile("minutes", ".csv");
        StringBuilder text = new StringBuilder("time,temperature °C\n");
        long start = Instant.parse("2021-01-01T00:00:00Z").getEpochSecond();
        for (int i = 0; i < LINES; i++) {
            LocalDateTime time = LocalDateTime.ofEpochSecond(start + 60L * i, 0, ZoneOffset.UTC);
            text.append(time.toLocalDate()).append('T');
            text.append(String.format("%02d:%02d:00", time.getHour(), time.getMinute()));
            text.append(',').append(17 + (i % 300) / 100.0).append('\n');
        }
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    @TearDown
    public void delete() throws IOException {
        Files.delete(file);
    }

    @Benchmark
    public ImportedLog inspectedAndRead() {
        return LoggerFile.read(file, Choices.from(LoggerFile.inspect(file, ZoneId.of("UTC"))), Progress.NONE);
    }

    @Benchmark
    public TimeSeries plainReader() throws IOException {
        TimeSeries.Builder series = new TimeSeries.Builder();
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            reader.readLine();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",");
                series.add(LocalDateTime.parse(cells[0]).toEpochSecond(ZoneOffset.UTC), Double.parseDouble(cells[1]));
            }
        }
        return series.build();
    }

    @Benchmark
    public int bytesAlone() throws IOException {
        return Files.readAllBytes(file).length;
    }
}
