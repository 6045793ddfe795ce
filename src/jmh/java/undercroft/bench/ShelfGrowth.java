package undercroft.bench;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.ref.Reference;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.demo.LongCellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.series.TimeSeries;

/**
 * How the time and the memory of an outlook grow with batches and years: one line a size, each size given as
 * {@code batches/places/years} or {@code batches/places/years/kept} for a shelf on which no batch was emptied. Times are
 * those of the processor over all threads, which other work on the machine leaves alone; the first size only warms up.
 */
public final class ShelfGrowth {
    private ShelfGrowth() {}

    public static void main(String[] sizes) {
        PrintStream out = System.out;
        out.println("batches/places/years  cold s  edit ms  ten minutes later ms  bytes a sample  kB a batch");
        for (String size : sizes) {
            measure(size.split("/"), out);
        }
    }

    private static void measure(String[] size, PrintStream out) {
        LongCellar shelf = new LongCellar(
                Integer.parseInt(size[0]), Integer.parseInt(size[1]), Double.parseDouble(size[2]), size.length < 4);
        long empty = held();
        Map<String, TimeSeries> logs = shelf.temperatures();
        long samples = logs.values().stream().mapToLong(TimeSeries::size).sum();
        long withLogs = held();
        Cellar cellar = shelf.cellar();
        ShelfMemory memory = new ShelfMemory();
        long begun = processor();
        CellarOutlook outlook = Outlooks.of(cellar, logs, LongCellar.NOW, List.of(), memory);
        double cold = (processor() - begun) / 1e9;
        double edit = Double.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            Batch edited = cellar.batches().get(cellar.batches().size() - 1);
            cellar = cellar.withBatch(edited.withNotes("edit " + i));
            begun = processor();
            outlook = Outlooks.of(cellar, logs, LongCellar.NOW.plusSeconds(i), List.of(), memory);
            edit = Math.min(edit, (processor() - begun) / 1e6);
        }
        begun = processor();
        outlook = Outlooks.of(cellar, logs, LongCellar.NOW.plusSeconds(600), List.of(), memory);
        double later = (processor() - begun) / 1e6;
        long withOutlook = held();
        out.printf(
                "%-20s %7.2f %8.1f %21.1f %15.1f %11.1f%n",
                String.join("/", size),
                cold,
                edit,
                later,
                (double) (withLogs - empty) / Math.max(1, samples),
                (withOutlook - withLogs) / 1e3 / Math.max(1, outlook.batches().size()));
        Reference.reachabilityFence(memory);
        Reference.reachabilityFence(logs);
    }

    private static long processor() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    /** Bytes held after collecting. */
    private static long held() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
