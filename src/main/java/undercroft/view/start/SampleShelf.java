package undercroft.view.start;

import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import undercroft.app.shelf.ShelfPlan;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Listed;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Stage;
import undercroft.view.kit.BottleCanvas;

/** Three crates as the shelf draws them, for somebody who has not seen it yet; nothing on it is a figure. */
final class SampleShelf extends HBox {
    private static final double WIDEST = 130;
    private static final double HEIGHT = 60;

    SampleShelf(boolean dark) {
        super(14);
        getStyleClass().add("start-sample");
        setMouseTransparent(true);
        setMinWidth(0);
        Rectangle frame = new Rectangle();
        frame.widthProperty().bind(widthProperty());
        frame.heightProperty().bind(heightProperty());
        setClip(frame);
        getChildren()
                .addAll(
                        crate("longneck-330", GlassColour.AMBER, 12, 12, 0.5, dark),
                        crate("returnable-500", GlassColour.AMBER, 10, 6, 1, dark),
                        crate("longneck-330", GlassColour.GREEN, 12, 12, 0.9, dark));
    }

    private static Region crate(String bottle, GlassColour colour, int count, int left, double fill, boolean dark) {
        ShelfPlan.Rack rack = new ShelfPlan.Rack(Listed.find(Bottles.STANDARD, bottle, "bottle"), colour, count, left);
        ShelfPlan.Crate crate = new ShelfPlan.Crate(
                bottle, bottle, "", "", Stage.CARBONATING, Alert.CLEAR, "", List.of(rack), fill, 0, "", "", false);
        BottleCanvas canvas = new BottleCanvas(crate);
        canvas.draw(WIDEST, HEIGHT, dark);
        return new HBox(canvas);
    }
}
