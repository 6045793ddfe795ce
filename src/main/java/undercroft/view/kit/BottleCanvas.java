package undercroft.view.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import undercroft.app.shelf.ShelfPlan;
import undercroft.outlook.lot.Stage;

/** The bottles of a crate behind its front board: taken ones leave their slot empty, planned ones show faintly. */
public final class BottleCanvas extends Canvas {
    private static final double HEIGHT = 66;
    private static final double SIDE = 9;
    private static final double ROW_RISE = 4;
    private static final double ROW_SHIFT = 3;
    private static final double GAP = 1.5;
    private static final double BOARD = 13;
    private static final double PLANNED = 0.35;
    private static final double LOOSEST = 1.5;
    private static final double MOST_WIDTH = 360;
    private static final double LEAST_WIDTH = 60;

    private final ShelfPlan.Crate crate;
    private final int rows;

    public BottleCanvas(ShelfPlan.Crate crate) {
        this.crate = crate;
        this.rows = rows(crate.count());
        setMouseTransparent(true);
    }

    private static int rows(int bottles) {
        return bottles > 48 ? 5 : bottles > 36 ? 4 : bottles > 16 ? 3 : bottles > 7 ? 2 : 1;
    }

    private record Slot(BottleShape shape, ShelfPlan.Rack rack, boolean taken) {}

    private List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        for (ShelfPlan.Rack rack : crate.racks()) {
            BottleShape shape = BottleShape.of(rack.type());
            for (int i = 0; i < rack.count(); i++) {
                slots.add(new Slot(shape, rack, i >= rack.left()));
            }
        }
        return slots;
    }

    /** Width the bottles want at full size. */
    static double wantedWidth(ShelfPlan.Crate crate) {
        BottleCanvas canvas = new BottleCanvas(crate);
        double width = 2 * SIDE;
        List<Slot> slots = canvas.slots();
        for (int i = 0; i < slots.size(); i += canvas.rows) {
            width += slots.get(i).shape().width() + GAP;
        }
        return Math.min(MOST_WIDTH, Math.ceil(width + ROW_SHIFT * (canvas.rows - 1)));
    }

    /** Draws the crate no wider and no higher than that, as large as it may be. */
    public void draw(double mostWidth, double height, boolean dark) {
        double scale = height / HEIGHT;
        double wide = Math.min(mostWidth, Math.max(LEAST_WIDTH, wantedWidth(crate)) * scale);
        setWidth(Math.ceil(wide));
        setHeight(height);
        GraphicsContext canvas = getGraphicsContext2D();
        canvas.clearRect(0, 0, getWidth(), height);
        canvas.save();
        canvas.scale(scale, scale);
        drawFull(canvas, wide / scale, dark);
        canvas.restore();
    }

    private void drawFull(GraphicsContext canvas, double width, boolean dark) {
        List<Slot> slots = slots();
        double advance = 0;
        double last = 0;
        for (int i = 0; i < slots.size(); i += rows) {
            advance += last == 0 ? 0 : last + GAP;
            last = slots.get(i).shape().width();
        }
        double room = width - 2 * SIDE - ROW_SHIFT * (rows - 1) - last;
        double spread = advance == 0 ? 1 : Math.min(LOOSEST, room / advance);
        for (int row = rows - 1; row >= 0; row--) {
            double x = SIDE + ROW_SHIFT * row;
            for (int i = 0; i + row < slots.size(); i += rows) {
                Slot slot = slots.get(i + row);
                draw(canvas, slot, x, HEIGHT - 3 - row * ROW_RISE, dark);
                x += (slots.get(i).shape().width() + GAP) * spread;
            }
        }
        drawBoard(canvas, width, dark);
    }

    private void draw(GraphicsContext canvas, Slot slot, double x, double ground, boolean dark) {
        boolean planned = crate.stage() == Stage.FILLING;
        if (planned || !slot.taken()) {
            canvas.setGlobalAlpha(planned ? PLANNED : 1);
            slot.shape()
                    .draw(
                            canvas,
                            x,
                            ground,
                            crate.fill(),
                            GlassPaint.of(slot.rack().colour(), dark));
            canvas.setGlobalAlpha(1);
        }
    }

    private void drawBoard(GraphicsContext canvas, double width, boolean dark) {
        Color face = dark ? Color.web("#54402B") : Color.web("#D9B98A");
        Color edge = dark ? Color.web("#7A6042") : Color.web("#A98252");
        canvas.setFill(face);
        canvas.fillRect(2, HEIGHT - BOARD - 17, 5, BOARD + 17);
        canvas.fillRect(width - 7, HEIGHT - BOARD - 17, 5, BOARD + 17);
        canvas.fillRoundRect(1, HEIGHT - BOARD, width - 2, BOARD + 4, 4, 4);
        canvas.setStroke(edge);
        canvas.setLineWidth(1);
        canvas.strokeLine(1.5, HEIGHT - BOARD + 0.5, width - 1.5, HEIGHT - BOARD + 0.5);
        canvas.strokeLine(1.5, HEIGHT - 0.5, width - 1.5, HEIGHT - 0.5);
    }
}
