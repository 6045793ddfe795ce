package undercroft.view;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import undercroft.app.Faults;
import undercroft.app.LastView;
import undercroft.app.Pages;
import undercroft.view.kit.Looks;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/**
 * Draws the pictures of README and guide from the demo at the moment at which it begins: {@code mvn -P pictures}. The
 * window is the real one, without a display.
 */
public final class PictureWriter {
    private static final Path README = Path.of("assets", "readme");
    private static final Path GUIDE = Path.of("src", "main", "resources", "undercroft", "guide");
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    /** The guide's are shown smaller than they are, so they are of a small window. */
    private static final int GUIDE_WIDTH = 1000;

    private static final int GUIDE_HEIGHT = 600;
    private static final int COLOURS = 256;

    private PictureWriter() {}

    public static void main(String[] arguments) throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        Platform.startup(begun::countDown);
        begun.await();
        Platform.setImplicitExit(false);
        Files.createDirectories(GUIDE);
        Files.createDirectories(README);
        for (boolean dark : new boolean[] {false, true}) {
            readme(dark);
            guide(Language.ENGLISH, dark);
            guide(Language.GERMAN, dark);
        }
        Platform.exit();
    }

    private static void readme(boolean dark) throws Exception {
        Open open = open(Language.ENGLISH, dark, WIDTH, HEIGHT);
        open.write(README, "shelf");
        open.look("quarry-porter");
        open.press("open-batch");
        open.write(README, "batch");
        open.turnTo("warm-spells");
        open.write(README, "warm-spells");
        open.turnTo("servings");
        open.write(README, "servings");
        open.close();
    }

    private static void guide(Language language, boolean dark) throws Exception {
        Open open = open(language, dark, GUIDE_WIDTH, GUIDE_HEIGHT);
        open.write(GUIDE, "guide-shelf");
        open.look("quarry-porter");
        open.press("open-batch");
        open.write(GUIDE, "guide-batch");
        open.turnTo("bottling-day");
        open.press("draft-lantern-stout");
        open.press("screen-carbonation");
        open.write(GUIDE, "guide-bottling");
        open.turnTo("warm-spells");
        open.write(GUIDE, "guide-spells");
        open.turnTo("servings");
        open.write(GUIDE, "guide-servings");
        open.close();
        Open start = start(language, dark);
        start.write(GUIDE, "guide-begin");
        start.close();
    }

    private static Open open(Language language, boolean dark, int width, int height) throws Exception {
        return onWindowThread(() -> {
            Looks.loadFonts();
            SampleContext sample = SampleContext.ofTheDemo(language.messages(Locale.ROOT));
            sample.context.dark().set(dark);
            Stage stage = stage(width, height);
            MainWindow window = new MainWindow(sample.context);
            window.show(stage);
            return new Open(stage, Optional.of(window), ending(language, dark));
        });
    }

    private static Open start(Language language, boolean dark) throws Exception {
        return onWindowThread(() -> {
            Messages messages = language.messages(Locale.ROOT);
            SampleContext sample = SampleContext.ofTheDemo(messages);
            sample.context.dark().set(dark);
            Stage stage = stage(GUIDE_WIDTH, GUIDE_HEIGHT);
            new StartWindow(
                            messages,
                            sample.context.chooser(),
                            new Faults(),
                            sample.context.workspace().getCellar().zone(),
                            Path.of("Documents"),
                            sample.context.tasks(),
                            sample.context.dark())
                    .show(stage);
            return new Open(stage, Optional.empty(), ending(language, dark));
        });
    }

    private static Stage stage(int width, int height) {
        Stage stage = new Stage();
        stage.setX(0);
        stage.setY(0);
        stage.setWidth(width);
        stage.setHeight(height);
        return stage;
    }

    private static String ending(Language language, boolean dark) {
        return "-" + language.id() + (dark ? "-dark" : "-light") + ".png";
    }

    private static <T> T onWindowThread(Callable<T> act) throws InterruptedException, ExecutionException {
        FutureTask<T> task = new FutureTask<>(act);
        Platform.runLater(task);
        return task.get();
    }

    /** A window that is shown, and what its pictures' names end with. */
    private record Open(Stage stage, Optional<MainWindow> window, String ending) {
        void look(String batchId) throws Exception {
            onWindowThread(() -> {
                window.orElseThrow().turnTo(new LastView(Pages.Page.SHELF, batchId));
                return batchId;
            });
        }

        void turnTo(String page) throws Exception {
            press("page-" + page);
        }

        void press(String id) throws Exception {
            onWindowThread(() -> {
                stage.getScene().getRoot().applyCss();
                stage.getScene().getRoot().layout();
                Node node = stage.getScene().lookup("#" + id);
                if (node instanceof ToggleButton link) {
                    link.fire();
                } else {
                    ((Button) node).fire();
                }
                return node;
            });
        }

        void write(Path folder, String name) throws Exception {
            settle();
            String file = folder.equals(README) ? name + ending.replace("-en", "") : name + ending;
            WritableImage image = onWindowThread(() -> {
                Scene scene = stage.getScene();
                window.ifPresent(shown -> scene.getRoot().requestFocus());
                return scene.snapshot(null);
            });
            ImageIO.write(indexed(image), "png", folder.resolve(file).toFile());
        }

        /** What is arranged after a layout is arranged a few times over. */
        private void settle() throws Exception {
            for (int i = 0; i < 6; i++) {
                onWindowThread(() -> {
                    stage.getScene().getRoot().applyCss();
                    stage.getScene().getRoot().layout();
                    return stage;
                });
                Thread.sleep(120);
            }
        }

        void close() throws Exception {
            onWindowThread(() -> {
                stage.close();
                return stage;
            });
        }
    }

    /** The picture in the colours that are most of it, each other pixel in the nearest of them: a third of the bytes. */
    private static BufferedImage indexed(WritableImage image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        Map<Integer, Integer> counts = new HashMap<>();
        for (int pixel : pixels) {
            counts.merge(pixel & 0xFFFFFF, 1, Integer::sum);
        }
        int[] colours = counts.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(COLOURS)
                .mapToInt(Map.Entry::getKey)
                .toArray();
        IndexColorModel model = new IndexColorModel(8, colours.length, colours, 0, false, -1, DataBuffer.TYPE_BYTE);
        BufferedImage indexed = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, model);
        Map<Integer, Integer> nearest = new HashMap<>();
        for (int i = 0; i < pixels.length; i++) {
            int at = nearest.computeIfAbsent(pixels[i] & 0xFFFFFF, colour -> nearest(colours, colour));
            indexed.getRaster().setSample(i % width, i / width, 0, at);
        }
        return indexed;
    }

    private static int nearest(int[] colours, int wanted) {
        int found = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < colours.length; i++) {
            int red = (colours[i] >> 16 & 0xFF) - (wanted >> 16 & 0xFF);
            int green = (colours[i] >> 8 & 0xFF) - (wanted >> 8 & 0xFF);
            int blue = (colours[i] & 0xFF) - (wanted & 0xFF);
            int distance = red * red + green * green + blue * blue;
            if (distance < least) {
                least = distance;
                found = i;
            }
        }
        return found;
    }
}
