package undercroft.bench;

import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Scene;
import javafx.scene.chart.LineChart;
import javafx.scene.chart.NumberAxis;
import javafx.scene.chart.XYChart;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.StripLayer;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Band;
import undercroft.series.TimeSeries;
import undercroft.view.kit.PlotsView;
import undercroft.wording.Messages;

/**
 * The four plots of a batch drawn anew after a small pan, its temperature logged at 50,000 and at 2 million noisy points
 * with a band behind them, against the toolkit's own line chart with 50,000 of the same points and against a pane with
 * nothing on it. Painting is included: each is drawn into an image of 900 by 500 pixels, in software.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dprism.order=sw",
            "-Djava.awt.headless=true"
        })
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class RedrawBench {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 500;
    private static final int FEW = 50_000;
    private static final int MANY = 2_000_000;
    private static final long SECONDS = 200L * 86_400;
    private static final int INSTANTS = 400;

    private final PlotStack few = stack(FEW);
    private final PlotStack many = stack(MANY);
    private final WritableImage image = new WritableImage(WIDTH, HEIGHT);
    private PlotsView plots;
    private LineChart<Number, Number> chart;
    private Pane nothing;
    private int turn;

    @Setup
    public void open() throws Exception {
        Platform.startup(() -> {});
        onToolkit(() -> {
            plots = new PlotsView(Messages.english(), String::valueOf);
            nothing = new Pane();
            chart = chart();
            for (Region each : List.of(plots, nothing, chart)) {
                each.setPrefSize(WIDTH, HEIGHT);
                new Scene(each, WIDTH, HEIGHT);
            }
            return image;
        });
    }

    @Benchmark
    public WritableImage fiftyThousandPoints() throws Exception {
        return plots(few);
    }

    @Benchmark
    public WritableImage twoMillionPoints() throws Exception {
        return plots(many);
    }

    @Benchmark
    public WritableImage aLineChartOfFiftyThousand() throws Exception {
        return onToolkit(() -> {
            NumberAxis time = (NumberAxis) chart.getXAxis();
            time.setLowerBound(pan());
            return chart.snapshot(null, image);
        });
    }

    @Benchmark
    public WritableImage anEmptyPane() throws Exception {
        return onToolkit(() -> nothing.snapshot(null, image));
    }

    private WritableImage plots(PlotStack stack) throws Exception {
        return onToolkit(() -> {
            plots.show(stack.over(stack.from() + pan(), stack.until()), false);
            return plots.snapshot(null, image);
        });
    }

    /** A few minutes to and fro, so that no drawing is the same as the one before. */
    private long pan() {
        turn = (turn + 1) % 7;
        return turn * 600L;
    }

    private static <T> T onToolkit(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    private static PlotStack stack(int points) {
        Plot temperature = Plot.of(
                "Temperature",
                ValueAxis.auto("°C", 1),
                new LineLayer(
                        log(points), 3 * 3600, Stroke.of(Role.ROOM, 1).withOpacity(0.6), "air"),
                new BandLayer(band(17, 2, 1), Role.TEMPERATURE, "bottles"));
        Plot light = Plot.of(
                "Light",
                ValueAxis.auto("", 2).from(0),
                new StripLayer(TimeSeries.of(new long[] {0, SECONDS / 2}, new double[] {0.4, 0.9}), SECONDS, Role.LIGHT, ""));
        return PlotStack.of(0, SECONDS, ZoneId.of("UTC"), Locale.UK)
                .with(Plot.of("Carbonation", ValueAxis.auto("vol", 2), new BandLayer(band(2, 0.5, 0.2), Role.CARBONATION, "")))
                .with(Plot.of(
                        "Pressure",
                        ValueAxis.auto("bar", 2),
                        new BandLayer(band(2.5, 0.4, 0.3), Role.PRESSURE, ""),
                        new ThresholdLayer(5, Role.LIMIT, "working pressure")))
                .with(temperature)
                .with(light)
                .withNow(SECONDS * 3 / 4, "now");
    }

    private static TimeSeries log(int points) {
        Random noise = new Random(1);
        TimeSeries.Builder log = new TimeSeries.Builder();
        for (int i = 0; i < points; i++) {
            log.add(SECONDS * i / points, 17 + 3 * Math.sin(i * 40.0 / points) + noise.nextGaussian());
        }
        return log.build();
    }

    private static Band band(double middle, double swing, double spread) {
        long[] times = new long[INSTANTS];
        double[][] levels = new double[5][INSTANTS];
        double[] offsets = {-1.6, -0.7, 0, 0.7, 1.6};
        for (int i = 0; i < INSTANTS; i++) {
            times[i] = SECONDS * i / (INSTANTS - 1);
            for (int level = 0; level < offsets.length; level++) {
                levels[level][i] = middle + swing * Math.sin(i * 0.3) + spread * offsets[level];
            }
        }
        return Band.of(times, levels);
    }

    private static LineChart<Number, Number> chart() {
        TimeSeries log = log(FEW);
        ObservableList<XYChart.Data<Number, Number>> points = FXCollections.observableArrayList();
        for (int i = 0; i < log.size(); i++) {
            points.add(new XYChart.Data<>(log.timeAt(i), log.valueAt(i)));
        }
        LineChart<Number, Number> chart =
                new LineChart<>(new NumberAxis(0, SECONDS, SECONDS / 10.0), new NumberAxis(8, 26, 2));
        chart.setAnimated(false);
        chart.setCreateSymbols(false);
        chart.getData().add(new XYChart.Series<>(points));
        return chart;
    }

    /** Runs it all and prints how many times the line chart takes longer. */
    public static void main(String... arguments) throws RunnerException {
        Collection<RunResult> results =
                new Runner(new OptionsBuilder().include(RedrawBench.class.getSimpleName()).build()).run();
        double chart = milliseconds(results, "aLineChart");
        double empty = milliseconds(results, "anEmptyPane");
        for (String points : List.of("fiftyThousand", "twoMillion")) {
            double ours = milliseconds(results, points);
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.1f ms, %.1f ms above an empty pane; the line chart of 50,000 takes %.1f ms, %.1f times as long%n",
                    points,
                    ours,
                    ours - empty,
                    chart,
                    chart / ours);
        }
    }

    private static double milliseconds(Collection<RunResult> results, String name) {
        return results.stream()
                .filter(each -> each.getParams().getBenchmark().contains("." + name))
                .mapToDouble(each -> each.getPrimaryResult().getScore())
                .findFirst()
                .orElseThrow();
    }
}
