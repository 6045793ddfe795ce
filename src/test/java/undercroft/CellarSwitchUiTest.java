package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.cellar.Cellar;
import undercroft.command.WindowRequest;
import undercroft.quantity.UnitSystem;
import undercroft.store.CellarStore;
import undercroft.store.RecentCellars;
import undercroft.view.edit.FixedFiles;
import undercroft.view.kit.Looks;

@ExtendWith(ApplicationExtension.class)
class CellarSwitchUiTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path home;

    private Stage stage;
    private HostEnvironment host;
    private CellarSwitch cellars;

    @Start
    void start(Stage shown) {
        Looks.loadFonts();
        stage = shown;
        host = new HostEnvironment(
                Map.of("XDG_CONFIG_HOME", home.resolve("settings").toString()), "Linux", home, home, Locale.UK);
        cellars = new CellarSwitch(stage, host, CLOCK, new FixedFiles());
        cellars.begin(WindowRequest.of(List.of()));
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
        awaitStart();
        onWindowThread(() -> cellars.show(folder));
        awaitTitle(folder.getFileName().toString());
    }

    private static void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(act));
    }

    private void awaitTitle(String begins) throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> stage.getTitle() != null && stage.getTitle().startsWith(begins));
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The first cellar is shown from the page on which one begins. */
    private void awaitStart() throws TimeoutException {
        if (stage.getTitle() == null || stage.getTitle().equals("Undercroft")) {
            WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> find("#start") != null);
        }
    }

    private Node find(String id) {
        return stage.getScene().lookup(id);
    }

    private MenuItem viewItem(String id) {
        return ((MenuButton) find("#view-menu"))
                .getItems().stream()
                        .filter(item -> id.equals(item.getId()))
                        .findFirst()
                        .orElseThrow();
    }

    private void awaitFault(String part) throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> find("#fault-bar").isVisible()
                        && ((Label) find("#fault-sentence")).getText().contains(part));
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
        onWindowThread(viewItem("theme")::fire);
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

    @Test
    void aNewCellarIsMadeFromANameAndEnter() throws TimeoutException {
        awaitStart();
        onWindowThread(() -> {
            ((TextField) find("#start-name")).setText("Orchard Row");
            ((Button) find("#start-create")).fire();
        });
        awaitTitle("Orchard Row");
        Path folder = home.resolve("Undercroft/orchard-row");
        assertEquals("Cupboard", CellarStore.read(folder).places().get(0).name());
        onWindowThread(cellars::close);
        assertEquals(
                List.of(folder),
                RecentCellars.in(home.resolve("settings/undercroft")).paths());
    }

    @Test
    void anUnreadableCellarLeavesTheOldOneOpenAndWorking() throws TimeoutException, IOException {
        show(cellar("Attic"));
        Path broken = Files.createDirectories(home.resolve("Broken"));
        Files.writeString(broken.resolve("cellar.json"), "{ \"schema\": 2, ");
        onWindowThread(() -> cellars.show(broken));
        awaitFault("cellar.json");
        assertTrue(stage.getTitle().startsWith("Attic"));
        onWindowThread(viewItem("units")::fire);
        onWindowThread(cellars::close);
        assertEquals(
                UnitSystem.US,
                CellarStore.read(home.resolve("Attic")).settings().units());
    }

    @Test
    void whatAnotherWindowHasIsLookedAtWithoutAChange() throws TimeoutException {
        Path folder = cellar("Attic");
        awaitStart();
        try (CellarStore other = CellarStore.open(folder, CLOCK, "another window")) {
            onWindowThread(() -> cellars.show(folder));
            awaitFault("open in another window");
            onWindowThread(((Button) find("#fault-act"))::fire);
            awaitTitle("Attic");
            assertTrue(find("#standing").isVisible());
            onWindowThread(viewItem("units")::fire);
            WaitForAsyncUtils.waitForFxEvents();
            assertTrue(find("#fault-bar").isVisible(), "a change is refused in one sentence");
            assertEquals(UnitSystem.METRIC, other.cellar().settings().units());
        }
        onWindowThread(((Button) find("#standing-out"))::fire);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> !find("#standing").isVisible());
    }

    @Test
    void theDemoSaysThatItIsOneAndLeadsOut() throws TimeoutException {
        awaitStart();
        onWindowThread(((Button) find("#start-demo"))::fire);
        awaitTitle("Weir House");
        assertTrue(((Label) find("#standing-sentence")).getText().contains("demo"));
        onWindowThread(((Button) find("#standing-out"))::fire);
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> find("#start-back") != null);
        onWindowThread(((Button) find("#start-back"))::fire);
        awaitTitle("Weir House");
        assertTrue(find("#standing").isVisible());
    }

    @Test
    void theWindowComesBackWithItsPageAndItsSizeAndTheLastCellar() throws TimeoutException {
        show(cellar("Attic"));
        onWindowThread(() -> {
            ((ToggleButton) find("#page-servings")).fire();
            stage.setWidth(1000);
            stage.setHeight(600);
        });
        WaitForAsyncUtils.waitForFxEvents();
        onWindowThread(cellars::close);
        onWindowThread(() -> {
            cellars = new CellarSwitch(stage, host, CLOCK, new FixedFiles());
            cellars.begin(WindowRequest.of(List.of()));
        });
        awaitTitle("Attic");
        assertTrue(((ToggleButton) find("#page-servings")).isSelected());
        assertEquals(1000, stage.getWidth());
        assertEquals(600, stage.getHeight());
    }

    @Test
    void whatNobodyForesawIsOneSentenceWithTheLogToSend() throws TimeoutException {
        show(cellar("Attic"));
        onWindowThread(() -> cellars.tell(new IllegalStateException("inside")));
        awaitFault("undercroft.log");
        assertTrue(Files.exists(host.stateFolder().resolve("undercroft.log")));
    }
}
