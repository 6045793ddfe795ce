package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.cellar.Cellar;
import undercroft.store.CellarStore;
import undercroft.view.kit.Looks;

@ExtendWith(ApplicationExtension.class)
class CellarSwitchUiTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path home;

    private Stage stage;
    private CellarSwitch cellars;

    @Start
    void start(Stage shown) {
        Looks.loadFonts();
        stage = shown;
        HostEnvironment host = new HostEnvironment(
                Map.of("XDG_CONFIG_HOME", home.resolve("settings").toString()), "Linux", home, home, Locale.UK);
        cellars = new CellarSwitch(stage, host, CLOCK);
    }

    @AfterEach
    void close() {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(cellars::close));
    }

    private Path cellar(String name) {
        Path folder = home.resolve(name);
        CellarStore.create(folder, Cellar.empty(name, ZoneOffset.UTC), CLOCK, "test")
                .close();
        return folder;
    }

    private void show(Path folder) throws TimeoutException {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(() -> cellars.show(folder)));
        String begins = folder.getFileName().toString();
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> stage.isShowing()
                        && stage.getTitle() != null
                        && stage.getTitle().startsWith(begins));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static long clocks() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("undercroft-clock"))
                .count();
    }

    @Test
    void nothingOfACellarIsKeptOnceAnotherOneIsShown() throws TimeoutException {
        Path first = cellar("Attic");
        Path second = cellar("Barn");
        show(first);
        WeakReference<Node> left = new WeakReference<>(stage.getScene().getRoot());
        show(second);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> {
            System.gc();
            WaitForAsyncUtils.waitForFxEvents();
            return left.refersTo(null);
        });
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> clocks() == 1);
        // Free for any other program.
        CellarStore.open(first, CLOCK, "test").close();
    }

    @Test
    void coloursGoWithThePersonFromCellarToCellar() throws TimeoutException {
        show(cellar("Attic"));
        MenuItem theme = ((MenuButton) stage.getScene().lookup("#view-menu"))
                .getItems().stream()
                        .filter(item -> "theme".equals(item.getId()))
                        .findFirst()
                        .orElseThrow();
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(theme::fire));
        show(cellar("Barn"));
        assertTrue(stage.getScene().getRoot().getPseudoClassStates().stream()
                .anyMatch(state -> state.getPseudoClassName().equals("dark")));
    }

    @Test
    void theCellarThatIsShownIsNotOpenedASecondTime() throws TimeoutException {
        Path folder = cellar("Attic");
        show(folder);
        Node root = stage.getScene().getRoot();
        show(folder);
        assertEquals(root, stage.getScene().getRoot());
    }
}
