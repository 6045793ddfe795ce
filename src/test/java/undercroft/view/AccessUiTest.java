package undercroft.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.outlook.OutlookSamples;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotsView;

/** Walks the scene graph of every page: whoever cannot see it hears what each control and picture is. */
@ExtendWith(ApplicationExtension.class)
class AccessUiTest {
    private MainWindow window;

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        SampleContext.fill(stage);
        window = new MainWindow(new SampleContext(OutlookSamples.cellar()).context);
        window.show(stage);
    }

    private void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(act));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Node find(String id) {
        return window.scene().lookup("#" + id);
    }

    private void assertAllAreNamed(String page) {
        List<String> nameless = new ArrayList<>();
        onWindowThread(() -> nameless.addAll(Spoken.nameless(window.scene().getRoot())));
        assertEquals(List.of(), nameless, page);
    }

    @Test
    void everyControlAndPictureOfEveryPageHasANameAndARole() {
        assertAllAreNamed("shelf");
        onWindowThread(((Button) find("open-batch"))::fire);
        assertAllAreNamed("batch");
        for (String tab : List.of("tab-bottles", "tab-moves", "tab-notes")) {
            onWindowThread(((ToggleButton) find(tab))::fire);
            assertAllAreNamed(tab);
        }
        for (String page : List.of("page-bottling-day", "page-warm-spells", "page-servings")) {
            onWindowThread(((ToggleButton) find(page))::fire);
            assertAllAreNamed(page);
        }
    }

    @Test
    void plotsAreSpokenInOneSentence() {
        onWindowThread(((Button) find("open-batch"))::fire);
        PlotsView plots = (PlotsView) find("plots");
        String spoken = plots.getAccessibleText();
        assertTrue(spoken.contains("Carbonation") && spoken.contains("vol"), spoken);
        assertTrue(spoken.contains("Pressure") && spoken.contains("Temperature"), spoken);
    }

    @Test
    void whatIsChosenByKeyIsSeen() {
        onWindowThread(() -> find("planks").requestFocus());
        assertTrue(find("planks").isFocused());
        onWindowThread(() -> find("place-loft").requestFocus());
        assertTrue(find("place-loft").isFocused());
        Region heading = (Region) find("place-loft");
        onWindowThread(heading::applyCss);
        assertTrue(
                heading.getBorder() != null && !heading.getBorder().getStrokes().isEmpty(), "the focus has a border");
    }
}
