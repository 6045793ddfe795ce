package undercroft.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.WindowBounds;
import undercroft.outlook.OutlookSamples;
import undercroft.view.kit.Looks;

/** The least window: what does not fit scrolls, and nothing is pushed out of sight. */
@ExtendWith(ApplicationExtension.class)
class SmallWindowUiTest {
    private MainWindow window;

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        stage.setWidth(WindowBounds.LEAST_WIDTH);
        stage.setHeight(WindowBounds.LEAST_HEIGHT);
        window = new MainWindow(new SampleContext(OutlookSamples.cellar()).context);
        window.show(stage);
    }

    private void turnTo(String page) {
        WaitForAsyncUtils.waitFor(
                WaitForAsyncUtils.asyncFx(() -> ((ToggleButton) window.scene().lookup("#page-" + page)).fire()));
        WaitForAsyncUtils.waitForFxEvents();
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(() -> {
            window.scene().getRoot().applyCss();
            window.scene().getRoot().layout();
        }));
    }

    @ParameterizedTest
    @ValueSource(strings = {"shelf", "bottling-day", "warm-spells", "servings"})
    void noPagePushesTheBarOutOfTheWindow(String page) {
        turnTo(page);
        assertEquals(WindowBounds.LEAST_WIDTH, window.scene().getWidth());
        Node bar = window.scene().lookup(".top-bar");
        Bounds bounds = bar.localToScene(bar.getLayoutBounds());
        assertTrue(bounds.getMinY() >= 0, () -> page + " " + bounds);
        for (Node part : ((Region) bar).getChildrenUnmodifiable()) {
            if (part.isVisible()) {
                assertTrue(
                        part.localToScene(part.getLayoutBounds()).getMaxX() <= WindowBounds.LEAST_WIDTH,
                        () -> page + " " + part);
            }
        }
        Region deck = (Region) window.scene().lookup(".page-scroll > .viewport").getParent();
        Region viewport = (Region) window.scene().lookup(".page-scroll > .viewport");
        Region content = (Region) deck.lookup(".middle");
        assertTrue(
                content == null || content.getWidth() <= viewport.getWidth() + 1,
                () -> page + " is wider than its room: " + content);
    }

    @ParameterizedTest
    @ValueSource(strings = {"serving-add", "occasion-at-time", "which-batch"})
    void theColumnOfTheServingsHidesNoneOfItsParts(String id) {
        turnTo("servings");
        Node side = window.scene().lookup("#servings");
        Node part = window.scene().lookup("#" + id);
        double edge = side.localToScene(side.getLayoutBounds()).getMaxX();
        assertTrue(part.localToScene(part.getLayoutBounds()).getMaxX() <= edge, () -> id + " " + part);
    }
}
