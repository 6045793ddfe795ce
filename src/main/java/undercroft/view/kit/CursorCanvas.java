package undercroft.view.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import undercroft.plot.Readout;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.TextStyle;

/** The cursor over the plots: a hairline, a dot on each curve, and a card with what they say. */
final class CursorCanvas extends Canvas {
    private static final double PADDING = 10;
    private static final double LINE = 17;
    private static final double AWAY = 12;
    private static final double COLUMN_GAP = 14;

    private final LongFunction<String> dateWords;
    private final FontMeasure measure = new FontMeasure();

    CursorCanvas(LongFunction<String> dateWords) {
        this.dateWords = dateWords;
    }

    void clear() {
        getGraphicsContext2D().clearRect(0, 0, getWidth(), getHeight());
    }

    /** Draws the cursor at an instant and returns what the card says, a line each. */
    String draw(Picture picture, long instant, List<Readout> values, Palette palette) {
        clear();
        GraphicsContext canvas = getGraphicsContext2D();
        double x = Math.floor(picture.time().xAt(instant)) + 0.5;
        double top = picture.areas().get(0).frame().y();
        double bottom = picture.areas().get(picture.areas().size() - 1).frame().bottom();
        canvas.setStroke(Color.web(palette.hex(Role.NOW), 0.8));
        canvas.setLineWidth(1);
        canvas.setLineDashes(2, 3);
        canvas.strokeLine(x, top, x, bottom);
        canvas.setLineDashes();
        for (int i = 0; i < values.size(); i++) {
            drawDot(canvas, picture.areas().get(i), values.get(i), x, palette);
        }
        String date = dateWords.apply(instant);
        drawCard(canvas, x, top + 6, date, values, palette);
        List<String> lines = new ArrayList<>(List.of(date));
        values.forEach(value -> lines.add(subject(value) + " " + value.text()));
        return String.join("\n", lines);
    }

    private static void drawDot(
            GraphicsContext canvas, Picture.PlotArea area, Readout value, double x, Palette palette) {
        if (value.value().isEmpty()) {
            return;
        }
        double y = area.values().yAt(value.value().getAsDouble());
        if (y >= area.frame().y() - 1 && y <= area.frame().bottom() + 1) {
            canvas.setFill(Color.web(palette.hex(Role.PAPER)));
            canvas.setStroke(Color.web(palette.hex(Role.NOW)));
            canvas.setLineWidth(1.5);
            canvas.fillOval(x - 3.5, y - 3.5, 7, 7);
            canvas.strokeOval(x - 3.5, y - 3.5, 7, 7);
        }
    }

    private void drawCard(
            GraphicsContext canvas, double x, double y, String date, List<Readout> values, Palette palette) {
        double names = 0;
        double texts = 0;
        for (Readout value : values) {
            names = Math.max(names, measure.width(subject(value), TextStyle.NOTE));
            texts = Math.max(texts, measure.width(value.text(), TextStyle.TITLE));
        }
        double inner = Math.max(measure.width(date, TextStyle.TITLE), names + COLUMN_GAP + texts);
        double width = Math.ceil(inner + 2 * PADDING);
        double height = LINE * (values.size() + 1) + PADDING + 6;
        double left = Math.floor(x + AWAY + width <= getWidth() ? x + AWAY : x - AWAY - width);
        left = Math.max(0, left);
        canvas.setFill(Color.web(palette.hex(Role.PAPER), 0.95));
        canvas.setStroke(Color.web(palette.hex(Role.FRAME)));
        canvas.setLineWidth(1);
        canvas.fillRoundRect(left, y, width, height, 10, 10);
        canvas.strokeRoundRect(left + 0.5, y + 0.5, width - 1, height - 1, 10, 10);
        canvas.setTextBaseline(VPos.BASELINE);
        canvas.setFont(Looks.font(TextStyle.TITLE));
        canvas.setFill(Color.web(palette.textHex(Role.INK)));
        canvas.setTextAlign(TextAlignment.LEFT);
        double baseline = y + PADDING + 10;
        canvas.fillText(date, left + PADDING, baseline);
        for (Readout value : values) {
            baseline += LINE;
            canvas.setFont(Looks.font(TextStyle.NOTE));
            canvas.setFill(Color.web(palette.textHex(Role.FAINT_INK)));
            canvas.setTextAlign(TextAlignment.LEFT);
            canvas.fillText(subject(value), left + PADDING, baseline);
            canvas.setFont(Looks.font(TextStyle.TITLE));
            canvas.setFill(Color.web(palette.textHex(Role.INK)));
            canvas.setTextAlign(TextAlignment.RIGHT);
            canvas.fillText(value.text(), left + width - PADDING, baseline);
        }
    }

    /** The title up to its unit. */
    private static String subject(Readout value) {
        int comma = value.title().indexOf(',');
        return comma < 0 ? value.title() : value.title().substring(0, comma);
    }
}
