package undercroft.view.kit;

import java.util.function.DoubleConsumer;
import javafx.application.Platform;
import javafx.scene.layout.Region;

/** Rearranging a part of the window when its width changes. */
public final class Widths {
    private Widths() {}

    /**
     * Calls with each new width, after the layout in which it came about: what is put in or taken out in the middle of a
     * layout would not be laid out any more.
     */
    public static void follow(Region region, DoubleConsumer arrange) {
        region.widthProperty()
                .addListener((property, before, after) -> Platform.runLater(() -> {
                    if (region.getWidth() == after.doubleValue()) {
                        arrange.accept(after.doubleValue());
                    }
                }));
    }
}
