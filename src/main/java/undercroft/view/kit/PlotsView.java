package undercroft.view.kit;

import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import undercroft.plot.PlotStack;
import undercroft.plot.Readout;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Picture;
import undercroft.plot.scale.TimeScale;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/**
 * A stack of plots with a cursor over all of them, zoom and pan. The picture is drawn at most once a pulse, by layout;
 * the cursor has a canvas of its own, so that moving it leaves the picture alone.
 */
public final class PlotsView extends Region {
    private static final double WHEEL_ZOOM = 1.2;
    private static final double KEY_ZOOM = 1.5;
    private static final double KEY_PAN_PIXELS = 80;
    private static final double KEY_CURSOR_PIXELS = 4;
    private static final long CLOSEST_SECONDS = 6 * 3600L;

    private final Canvas chart = new Canvas();
    private final Messages messages;
    private final LongFunction<String> dateWords;
    private final CursorCanvas cursor;
    private final ZoomButtons buttons;
    private final FontMeasure measure = new FontMeasure();
    private final ReadOnlyStringWrapper readout = new ReadOnlyStringWrapper(this, "readout", "");
    private PlotStack whole;
    private PlotStack usual;
    private PlotStack shown;
    private Picture picture;
    private Palette palette = Palette.LIGHT;
    private double lastX;
    private double cursorX = Double.NaN;

    public PlotsView(Messages messages, LongFunction<String> dateWords) {
        this.messages = messages;
        this.dateWords = dateWords;
        cursor = new CursorCanvas(dateWords);
        buttons = new ZoomButtons(
                zoomButton(messages, "zoom-all", "plots.zoom.all", "plots.zoom.all.sentence", this::showUsual),
                zoomButton(
                        messages,
                        "zoom-wider",
                        "plots.zoom.wider",
                        "plots.zoom.wider.sentence",
                        () -> zoom(1 / KEY_ZOOM)),
                zoomButton(
                        messages,
                        "zoom-closer",
                        "plots.zoom.closer",
                        "plots.zoom.closer.sentence",
                        () -> zoom(KEY_ZOOM)));
        getChildren().addAll(chart, cursor, buttons);
        cursor.setMouseTransparent(true);
        getStyleClass().add("plots");
        setId("plots");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleHelp(messages.of("plots.sentence"));
        setOnMouseMoved(event -> pointAt(event.getX()));
        setOnMouseExited(event -> pointAt(Double.NaN));
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnScroll(this::scroll);
        setOnKeyPressed(this::key);
    }

    private static Button zoomButton(Messages messages, String id, String key, String sentenceKey, Runnable act) {
        return ZoomButtons.button(id, messages.of(key), messages.of(sentenceKey), act);
    }

    /** What can be done with the plots, from a button beside the zoom and from the menu of the right mouse button. */
    void offer(String sentence, List<MenuItem> items) {
        MenuButton more = new MenuButton(messages.of("plots.menu.button"));
        more.setId("plot-menu");
        more.getStyleClass().addAll("quiet", "small");
        more.setAccessibleText(sentence);
        more.setTooltip(new Tooltip(sentence));
        more.getItems().setAll(items);
        buttons.getChildren().add(more);
        setOnContextMenuRequested(event -> {
            more.show();
            event.consume();
        });
    }

    String dateWords(long epochSecond) {
        return dateWords.apply(epochSecond);
    }

    /** Says in one sentence what the plots say now. */
    private void speak() {
        long at = shown.now().orElse(shown.from());
        String values = shown.valuesAt(at).stream()
                .map(value -> messages.of("plots.spoken.value", value.title(), value.text()))
                .collect(Collectors.joining("; "));
        setAccessibleText(messages.of("plots.spoken", dateWords.apply(at), values));
    }

    /** Shows other plots over their whole time; the stretch looked at stays when {@code keepsView}. */
    public void show(PlotStack stack, boolean keepsView) {
        show(stack, stack.until(), keepsView);
    }

    /**
     * Shows other plots: {@code stack} over its whole time can be zoomed out to, the stretch up to {@code usualUntil} is
     * shown at first. What was zoomed to stays when {@code keepsView}.
     */
    public void show(PlotStack stack, long usualUntil, boolean keepsView) {
        boolean keeps = keepsView && shown != null && isZoomed();
        PlotStack before = shown;
        whole = stack;
        usual = stack.over(stack.from(), Math.max(stack.from() + 1, Math.min(stack.until(), usualUntil)));
        shown = keeps ? stack.over(before.from(), before.until()) : usual;
        speak();
        requestLayout();
    }

    private boolean isZoomed() {
        return shown.from() != usual.from() || shown.until() != usual.until();
    }

    public void setPalette(Palette newPalette) {
        palette = newPalette;
        requestLayout();
    }

    /** Date and values under the cursor; empty without a cursor. */
    public ReadOnlyStringProperty readoutProperty() {
        return readout.getReadOnlyProperty();
    }

    public PlotStack shown() {
        return shown;
    }

    public Picture picture() {
        return picture;
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        if (chart.getWidth() != width || chart.getHeight() != height) {
            chart.setWidth(width);
            chart.setHeight(height);
            cursor.setWidth(width);
            cursor.setHeight(height);
        }
        buttons.showsAll(shown == null || !isZoomed());
        buttons.autosize();
        buttons.relocate(Math.max(0, width - buttons.getWidth()), 0);
        GraphicsContext canvas = chart.getGraphicsContext2D();
        canvas.clearRect(0, 0, width, height);
        if (shown != null && width > 0 && height > 0) {
            picture = shown.layout(width, height, measure);
            picture.drawWith(new CanvasPen(canvas, palette));
            pointAt(cursorX);
        }
    }

    private void pointAt(double x) {
        cursorX = x;
        boolean inside = picture != null
                && !picture.areas().isEmpty()
                && x >= picture.time().left()
                && x <= picture.time().right();
        if (!inside) {
            readout.set("");
            cursor.clear();
            return;
        }
        long instant = picture.time().epochAt(x);
        List<Readout> values = shown.valuesAt(instant);
        readout.set(cursor.draw(picture, instant, values, palette));
    }

    private void press(MouseEvent event) {
        requestFocus();
        lastX = event.getX();
        if (event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2) {
            showUsual();
        }
    }

    private void drag(MouseEvent event) {
        if (picture != null) {
            look(picture.time().pannedBy(event.getX() - lastX));
            lastX = event.getX();
            cursorX = event.getX();
        }
    }

    /** The wheel alone belongs to the page it stands in. */
    private void scroll(ScrollEvent event) {
        if (picture == null || picture.areas().isEmpty() || !event.isShortcutDown() || event.getDeltaY() == 0) {
            return;
        }
        double about = Math.max(picture.time().left(), event.getX());
        look(picture.time().zoomedAbout(about, event.getDeltaY() > 0 ? WHEEL_ZOOM : 1 / WHEEL_ZOOM));
        event.consume();
    }

    /** Shows less time, or more; about the cursor where it is over the plots, else about the middle. */
    private void zoom(double factor) {
        if (picture != null && !picture.areas().isEmpty()) {
            look(picture.time().zoomedAbout(middle(), factor));
        }
    }

    private double middle() {
        TimeScale time = picture.time();
        return Double.isNaN(cursorX) ? (time.left() + time.right()) / 2 : cursorX;
    }

    private void key(KeyEvent event) {
        if (picture == null || picture.areas().isEmpty()) {
            return;
        }
        Shortcut.of(Shortcut.Field.PLOTS, event).ifPresent(pressed -> {
            act(pressed);
            event.consume();
        });
    }

    private void act(Shortcut pressed) {
        TimeScale time = picture.time();
        switch (pressed) {
            case CLOSER -> look(time.zoomedAbout(middle(), KEY_ZOOM));
            case WIDER -> look(time.zoomedAbout(middle(), 1 / KEY_ZOOM));
            case EARLIER -> look(time.pannedBy(KEY_PAN_PIXELS));
            case LATER -> look(time.pannedBy(-KEY_PAN_PIXELS));
            case CURSOR_EARLIER -> pointAt(Math.max(time.left(), middle() - KEY_CURSOR_PIXELS));
            case CURSOR_LATER -> pointAt(Math.min(time.right(), middle() + KEY_CURSOR_PIXELS));
            case WHOLE_TIME -> showUsual();
            default -> pointAt(Double.NaN);
        }
    }

    private void showUsual() {
        shown = usual;
        requestLayout();
    }

    /** Keeps the look inside the whole stretch: nothing is known beyond it. */
    private void look(TimeScale wanted) {
        long most = whole.until() - whole.from();
        long seconds = Math.max(Math.min(CLOSEST_SECONDS, most), Math.min(most, wanted.until() - wanted.from()));
        long from = Math.max(whole.from(), Math.min(whole.until() - seconds, wanted.from()));
        shown = whole.over(from, from + seconds);
        requestLayout();
    }
}
