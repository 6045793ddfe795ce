package undercroft.view.kit;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.MenuItem;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.paint.Color;
import javafx.scene.transform.Transform;
import undercroft.app.form.Slug;
import undercroft.plot.PlotTable;
import undercroft.plot.SvgPen;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Role;
import undercroft.report.PlotCsv;
import undercroft.wording.Messages;

/** Copies plots or saves them: as a picture, as a drawing, as the table they show. */
public final class PlotMenu {
    private static final double WIDTH = 900;
    private static final double HEIGHT_A_PLOT = 170;
    /** Pixels a unit, so that it prints well. */
    private static final double SHARPNESS = 2;

    private final PlotsView plots;
    private final WindowContext context;
    private final Messages messages;
    private final Supplier<String> title;

    private PlotMenu(PlotsView plots, WindowContext context, Messages messages, Supplier<String> title) {
        this.plots = plots;
        this.context = context;
        this.messages = messages;
        this.title = title;
    }

    /** Gives plots their menu; {@code title} says what they show, a file is named after it. */
    public static void on(PlotsView plots, WindowContext context, Messages messages, Supplier<String> title) {
        PlotMenu menu = new PlotMenu(plots, context, messages, title);
        plots.offer(
                messages.of("plots.menu.sentence"),
                List.of(
                        menu.item("plot-table", "plots.menu.table", menu::showTable),
                        menu.item("plot-copy", "plots.menu.copy", menu::copy),
                        menu.item("plot-png", "plots.menu.save-picture", menu::savePng),
                        menu.item("plot-svg", "plots.menu.save-drawing", menu::saveSvg),
                        menu.item("plot-csv", "plots.menu.save-table", menu::saveCsv)));
    }

    private MenuItem item(String id, String key, Runnable act) {
        MenuItem item = new MenuItem(messages.of(key));
        item.setId(id);
        item.setOnAction(event -> {
            if (plots.shown() != null) {
                context.faults().guard(act);
            }
        });
        return item;
    }

    private void showTable() {
        PlotTableDialog.show(plots, context.dark().get(), messages, title.get());
    }

    private Picture picture() {
        double height = HEIGHT_A_PLOT * Math.max(1, plots.shown().plots().size());
        return plots.shown().layout(WIDTH, height, new FontMeasure());
    }

    private WritableImage image() {
        Picture picture = picture();
        Canvas canvas = new Canvas(picture.width(), picture.height());
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.setFill(Color.web(Palette.LIGHT.hex(Role.PAPER)));
        pen.fillRect(0, 0, picture.width(), picture.height());
        picture.drawWith(new CanvasPen(pen, Palette.LIGHT));
        SnapshotParameters sharp = new SnapshotParameters();
        sharp.setTransform(Transform.scale(SHARPNESS, SHARPNESS));
        return canvas.snapshot(sharp, null);
    }

    private void copy() {
        String table = PlotCsv.of(PlotTable.of(plots.shown()));
        Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.IMAGE, image(), DataFormat.PLAIN_TEXT, table));
        context.faults().tell(messages.of("plots.copied"));
    }

    private void savePng() {
        WritableImage image = image();
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        save("png", () -> PngFile.of(width, height, pixels));
    }

    private void saveSvg() {
        Picture picture = picture();
        String name = title.get();
        String sentence = plots.getAccessibleText();
        save("svg", () -> SvgPen.file(picture, name, sentence, Palette.css()).getBytes(StandardCharsets.UTF_8));
    }

    private void saveCsv() {
        PlotTable table = PlotTable.of(plots.shown());
        save("csv", () -> PlotCsv.of(table).getBytes(StandardCharsets.UTF_8));
    }

    private void save(String ending, Callable<byte[]> content) {
        new SavedFiles(context, messages)
                .save(plots.getScene().getWindow(), Slug.of(title.get(), "plot", List.of()), ending, content);
    }
}
