package undercroft.view.kit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
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

    private final Node over;
    private final Supplier<Optional<Shown>> shown;
    private final WindowContext context;
    private final Messages messages;

    /**
     * What is shown now.
     *
     * @param title what it shows; a file is named after it
     * @param sentence what it says
     * @param table its values as CSV; empty where it has none
     */
    public record Shown(Picture picture, String title, String sentence, Optional<String> table) {}

    private PlotMenu(Node over, Supplier<Optional<Shown>> shown, WindowContext context, Messages messages) {
        this.over = over;
        this.shown = shown;
        this.context = context;
        this.messages = messages;
    }

    /** Gives plots their menu; {@code title} says what they show, a file is named after it. */
    public static void on(PlotsView plots, WindowContext context, Messages messages, Supplier<String> title) {
        PlotMenu menu = new PlotMenu(plots, () -> shown(plots, title.get()), context, messages);
        List<MenuItem> items = new ArrayList<>();
        items.add(menu.item(
                "plot-table",
                "plots.menu.table",
                now -> PlotTableDialog.show(plots, context.dark().get(), messages, now.title())));
        items.addAll(menu.pictures("plots.menu.copy"));
        items.add(menu.item("plot-csv", "plots.menu.save-table", menu::saveCsv));
        plots.offer(messages.of("plots.menu.sentence"), items);
    }

    /** The menu of a picture that is no stack of plots and has no table. */
    public static List<MenuItem> of(
            Node over, WindowContext context, Messages messages, Supplier<Optional<Shown>> shown) {
        return new PlotMenu(over, shown, context, messages).pictures("plots.menu.copy-picture");
    }

    private static Optional<Shown> shown(PlotsView plots, String title) {
        return Optional.ofNullable(plots.shown())
                .map(stack -> new Shown(
                        stack.layout(
                                WIDTH, HEIGHT_A_PLOT * Math.max(1, stack.plots().size()), new FontMeasure()),
                        title,
                        plots.getAccessibleText(),
                        Optional.of(PlotCsv.of(PlotTable.of(stack)))));
    }

    private List<MenuItem> pictures(String copyKey) {
        return List.of(
                item("plot-copy", copyKey, this::copy),
                item("plot-png", "plots.menu.save-picture", this::savePng),
                item("plot-svg", "plots.menu.save-drawing", this::saveSvg));
    }

    private MenuItem item(String id, String key, Consumer<Shown> act) {
        MenuItem item = new MenuItem(messages.of(key));
        item.setId(id);
        item.setOnAction(event -> shown.get().ifPresent(now -> context.faults().guard(() -> act.accept(now))));
        return item;
    }

    private static WritableImage image(Picture picture) {
        Canvas canvas = new Canvas(picture.width(), picture.height());
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.setFill(Color.web(Palette.LIGHT.hex(Role.PAPER)));
        pen.fillRect(0, 0, picture.width(), picture.height());
        picture.drawWith(new CanvasPen(pen, Palette.LIGHT));
        SnapshotParameters sharp = new SnapshotParameters();
        sharp.setTransform(Transform.scale(SHARPNESS, SHARPNESS));
        return canvas.snapshot(sharp, null);
    }

    private void copy(Shown now) {
        Map<DataFormat, Object> content = new HashMap<>();
        content.put(DataFormat.IMAGE, image(now.picture()));
        content.put(DataFormat.PLAIN_TEXT, now.table().orElse(now.sentence()));
        Clipboard.getSystemClipboard().setContent(content);
        context.faults().tell(messages.of("plots.copied"));
    }

    private void savePng(Shown now) {
        WritableImage image = image(now.picture());
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        save(now, "png", () -> PngFile.of(width, height, pixels));
    }

    private void saveSvg(Shown now) {
        save(
                now,
                "svg",
                () -> SvgPen.file(now.picture(), now.title(), now.sentence(), Palette.css())
                        .getBytes(StandardCharsets.UTF_8));
    }

    private void saveCsv(Shown now) {
        now.table().ifPresent(table -> save(now, "csv", () -> table.getBytes(StandardCharsets.UTF_8)));
    }

    private void save(Shown now, String ending, Callable<byte[]> content) {
        new SavedFiles(context, messages)
                .save(over.getScene().getWindow(), Slug.of(now.title(), "plot", List.of()), ending, content);
    }
}
