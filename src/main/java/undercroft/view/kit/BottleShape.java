package undercroft.view.kit;

import javafx.scene.canvas.GraphicsContext;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;

/** The silhouette of a make of bottle, standing on a line. */
record BottleShape(double width, double height, double neck, double shoulderTop, double shoulderFoot, Closure closure) {
    private static final double PIXELS_PER_MILLIMETRE = 0.165;
    private static final double HEIGHT_OF_330 = 38;

    static BottleShape of(BottleType type) {
        double width = Math.max(9, Math.min(16, type.bodyMillimetres() * PIXELS_PER_MILLIMETRE));
        double height = Math.min(50, HEIGHT_OF_330 * Math.pow(type.fillMillilitres() / 330, 0.26));
        if (type.bottleClass().isSparkling()) {
            return new BottleShape(width, height, 0.42, 0.30, 0.62, type.closure());
        }
        if (type.bottleClass().isPlastic()) {
            return new BottleShape(width, height, 0.46, 0.14, 0.34, type.closure());
        }
        if (type.closure() == Closure.SWING_TOP) {
            return new BottleShape(width, height, 0.40, 0.34, 0.48, type.closure());
        }
        return new BottleShape(width, height, 0.38, 0.36, 0.52, type.closure());
    }

    /** Draws one bottle with its left edge at {@code x}, standing on {@code ground}, filled up to a share of its height. */
    void draw(GraphicsContext canvas, double x, double ground, double fill, GlassPaint paint) {
        double top = ground - height;
        outline(canvas, x, top, ground);
        canvas.setFill(paint.glass());
        canvas.fill();
        double level = ground - Math.max(0, Math.min(1, fill)) * height * 0.86;
        if (fill > 0) {
            canvas.save();
            outline(canvas, x, top, ground);
            canvas.clip();
            canvas.setFill(paint.beer());
            canvas.fillRect(x, level, width, ground - level);
            canvas.restore();
        }
        outline(canvas, x, top, ground);
        canvas.setStroke(paint.outline());
        canvas.setLineWidth(0.9);
        canvas.stroke();
        canvas.setFill(paint.outline());
        double cap = width * (neck + 0.1);
        double left = x + (width - cap) / 2;
        canvas.fillRect(left, top - 1.2, cap, closure == Closure.SCREW ? 4 : 2.6);
        if (closure == Closure.SWING_TOP) {
            canvas.fillOval(x + width / 2 - 2, top - 4, 4, 4);
        }
    }

    private void outline(GraphicsContext canvas, double x, double top, double ground) {
        double middle = x + width / 2;
        double halfNeck = width * neck / 2;
        double neckFoot = top + height * shoulderTop;
        double shoulder = top + height * shoulderFoot;
        double bend = (shoulder - neckFoot) * 0.55;
        canvas.beginPath();
        canvas.moveTo(middle - halfNeck, top);
        canvas.lineTo(middle - halfNeck, neckFoot);
        canvas.bezierCurveTo(middle - halfNeck, neckFoot + bend, x + 0.5, shoulder - bend, x + 0.5, shoulder);
        canvas.lineTo(x + 0.5, ground - 1.5);
        canvas.quadraticCurveTo(x + 0.5, ground, x + 2, ground);
        canvas.lineTo(x + width - 2, ground);
        canvas.quadraticCurveTo(x + width - 0.5, ground, x + width - 0.5, ground - 1.5);
        canvas.lineTo(x + width - 0.5, shoulder);
        canvas.bezierCurveTo(
                x + width - 0.5, shoulder - bend, middle + halfNeck, neckFoot + bend, middle + halfNeck, neckFoot);
        canvas.lineTo(middle + halfNeck, top);
        canvas.closePath();
    }
}
