package undercroft.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.series.TimeSeries;

/** A shelf of a hundred batches refreshed: the demo's, over and over under other ids. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ShelfBench {
    private final Map<String, TimeSeries> temperatures = DemoShelf.temperatures();
    private final Cellar hundred = hundred();
    private final ShelfMemory memory = new ShelfMemory();
    private Instant now = DemoShelf.NOW;

    @Benchmark
    public CellarOutlook aHundredBatches() {
        return Outlooks.of(hundred, temperatures, DemoShelf.NOW);
    }

    /** The same after an edit to one batch. */
    @Benchmark
    public CellarOutlook aHundredBatchesAfterOneEdit() {
        Batch edited = hundred.batches().get(0);
        now = now.plusSeconds(1);
        Cellar after = hundred.withBatch(edited.withNotes("edit at " + now));
        return Outlooks.of(after, temperatures, DemoShelf.NOW, List.of(), memory);
    }

    private static Cellar hundred() {
        Cellar demo = DemoShelf.cellar();
        List<Batch> batches = new ArrayList<>();
        for (int i = 0; batches.size() < 100; i++) {
            Batch batch = demo.batches().get(i % demo.batches().size());
            if (batch.cappedAt().isPresent()) {
                batches.add(new Batch(
                        batch.id() + "-" + i,
                        batch.name(),
                        batch.beer(),
                        batch.yeast(),
                        batch.priming(),
                        batch.fillingMethod(),
                        batch.cappedAt(),
                        batch.lots(),
                        batch.readings(),
                        batch.notes()));
            }
        }
        return demo.withServings(List.of()).withBatches(batches);
    }
}
