package undercroft.bench;

import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/**
 * From the command to a painted window, whole processes in turn, against the smallest window the toolkit makes. Each is
 * shown on a virtual display that keeps its picture in a file ({@code Xvfb -fbdir}). The smallest is painted when the display
 * is no longer black, a shelf when its crates bring a hundred colours; an empty window of ours would not count. A shelf is
 * given as {@code name=command with its arguments}. Prints the median of each and its ratio to the smallest.
 */
public final class StartBench {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final int ROUNDS = 7;
    private static final int DISPLAY = 87;
    private static final int COLOURS_OF_A_SHELF = 100;
    private static final long PATIENCE = TimeUnit.SECONDS.toNanos(60);

    private static final String SMALLEST = "smallest";

    private StartBench() {}

    /** A window with one word. */
    public static final class Smallest extends Application {
        @Override
        public void start(Stage stage) {
            stage.setScene(new Scene(new StackPane(new Label("smallest")), WIDTH, HEIGHT));
            stage.setX(0);
            stage.setY(0);
            stage.show();
        }
    }

    public static void main(String[] windows) throws IOException, InterruptedException {
        Map<String, List<String>> commands = new LinkedHashMap<>();
        commands.put(
                SMALLEST,
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "undercroft.bench.StartBench$Launch"));
        for (String window : windows) {
            int equals = window.indexOf('=');
            commands.put(window.substring(0, equals), List.of(window.substring(equals + 1).split(" ")));
        }
        Path folder = Files.createTempDirectory("start");
        Process display = new ProcessBuilder(
                        "Xvfb", ":" + DISPLAY, "-screen", "0", WIDTH + "x" + HEIGHT + "x24", "-fbdir", folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            Thread.sleep(1500);
            print(measure(commands, folder.resolve("Xvfb_screen0").toFile()), System.out);
        } finally {
            display.destroy();
        }
    }

    private static Map<String, double[]> measure(Map<String, List<String>> commands, File screen)
            throws IOException, InterruptedException {
        Map<String, double[]> seconds = new LinkedHashMap<>();
        commands.keySet().forEach(name -> seconds.put(name, new double[ROUNDS]));
        try (RandomAccessFile file = new RandomAccessFile(screen, "r")) {
            MappedByteBuffer picture = file.getChannel().map(FileChannel.MapMode.READ_ONLY, 0, file.length());
            for (int round = -1; round < ROUNDS; round++) {
                for (Map.Entry<String, List<String>> each : commands.entrySet()) {
                    int colours = each.getKey().equals(SMALLEST) ? 1 : COLOURS_OF_A_SHELF;
                    double taken = untilPainted(each.getValue(), picture, colours);
                    if (round >= 0) {
                        seconds.get(each.getKey())[round] = taken;
                    }
                }
            }
        }
        return seconds;
    }

    private static double untilPainted(List<String> command, MappedByteBuffer picture, int colours)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(command))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("DISPLAY", ":" + DISPLAY);
        long begun = System.nanoTime();
        Process process = builder.start();
        while (colours(picture) < colours && System.nanoTime() - begun < PATIENCE) {
            Thread.sleep(4);
        }
        double taken = (System.nanoTime() - begun) / 1e9;
        Thread.sleep(1500);
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly().waitFor();
        while (colours(picture) > 0) {
            Thread.sleep(50);
        }
        return taken;
    }

    /** The number of colours beside black, in every 97th pixel. */
    private static int colours(MappedByteBuffer picture) {
        int pixels = WIDTH * HEIGHT;
        int header = picture.capacity() - 4 * pixels;
        Set<Integer> seen = new HashSet<>();
        for (int pixel = 0; pixel < pixels; pixel += 97) {
            seen.add(picture.getInt(header + 4 * pixel) & 0xffffff00);
        }
        seen.remove(0);
        return seen.size();
    }

    private static void print(Map<String, double[]> seconds, PrintStream out) {
        double smallest = median(seconds.get(SMALLEST));
        seconds.forEach((name, all) -> out.printf(
                "%-12s %.2f s (%.2f to %.2f), %.2f times the smallest window%n",
                name,
                median(all),
                Arrays.stream(all).min().orElseThrow(),
                Arrays.stream(all).max().orElseThrow(),
                median(all) / smallest));
    }

    private static double median(double[] all) {
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Starts the smallest window from the class path. */
    public static final class Launch {
        private Launch() {}

        public static void main(String[] arguments) {
            Application.launch(Smallest.class, arguments);
        }
    }
}
