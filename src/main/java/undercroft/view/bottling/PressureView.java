package undercroft.view.bottling;

import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import undercroft.picture.PressurePicture;
import undercroft.view.kit.CanvasPen;
import undercroft.view.kit.Looks;

/** Draws the pressure a bottle comes to. */
final class PressureView extends Region {
    private static final double HEIGHT = 212;

    private final PressurePicture picture;
    private final boolean dark;
    private final Canvas canvas = new Canvas();

    PressureView(PressurePicture picture, boolean dark) {
        this.picture = picture;
        this.dark = dark;
        setId("pressure-picture");
        setPrefHeight(HEIGHT);
        setMinHeight(HEIGHT);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(picture.sentence());
        getChildren().add(canvas);
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        if (width < 1) {
            return;
        }
        canvas.setWidth(width);
        canvas.setHeight(HEIGHT);
        canvas.getGraphicsContext2D().clearRect(0, 0, width, HEIGHT);
        CanvasPen pen = new CanvasPen(canvas.getGraphicsContext2D(), Looks.palette(dark));
        picture.marks(width, HEIGHT).forEach(mark -> mark.drawWith(pen));
    }
}
