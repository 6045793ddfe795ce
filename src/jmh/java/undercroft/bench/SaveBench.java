package undercroft.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
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
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.demo.LongCellar;
import undercroft.store.CellarStore;

/** A cellar of 500 batches saved after an edit, against writing and forcing the same bytes to a file. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 3)
public class SaveBench {
    private static final int BATCHES = 500;

    private Path folder;
    private CellarStore store;
    private Cellar cellar;
    private byte[] bytes;
    private int edit;

    @Setup
    public void create() throws IOException {
        folder = Files.createTempDirectory("save");
        cellar = new LongCellar(BATCHES, 10, 5, true).cellar();
        Path made = folder.resolve("cellar");
        store = CellarStore.create(
                made, cellar, Clock.fixed(LongCellar.NOW, ZoneOffset.UTC), "undercroft");
        bytes = Files.readAllBytes(made.resolve("cellar.json"));
    }

    @TearDown
    public void delete() throws IOException {
        store.close();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    /** With its check, its history and its folder forced. */
    @Benchmark
    public Cellar saved() {
        List<Batch> batches = cellar.batches();
        cellar = cellar.withBatch(batches.get(edit % batches.size()).withNotes("edit " + edit++));
        store.save(cellar);
        return cellar;
    }

    @Benchmark
    public Path writtenAndForced() throws IOException {
        Path file = folder.resolve("bare");
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(bytes));
            channel.force(true);
        }
        return file;
    }
}
