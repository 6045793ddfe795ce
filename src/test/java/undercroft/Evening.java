package undercroft;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.bottling.PlanSamples;
import undercroft.cellar.Cellar;
import undercroft.command.WindowRequest;
import undercroft.store.CellarStore;
import undercroft.view.edit.FixedFiles;
import undercroft.view.kit.Looks;

/** An evening with the whole program: its window on the stage, a folder of its own, and a hand for mouse and keys. */
abstract class Evening {
    static final Instant NOW = PlanSamples.NOW;
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    @TempDir
    Path home;

    final Hand hand = new Hand();
    Stage stage;
    private CellarSwitch cellars;

    /** The toolkit looks for the start in each class alone. */
    void take(Stage shown) {
        Looks.loadFonts();
        stage = shown;
        stage.setX(0);
        stage.setY(0);
    }

    @AfterEach
    void close() {
        WaitForAsyncUtils.waitForAsyncFx(30_000, () -> {
            List.copyOf(Window.getWindows()).stream()
                    .filter(window -> window != stage)
                    .forEach(Window::hide);
            cellars.close();
        });
    }

    /** Closes the cellar as the program does at its end. */
    void leave() {
        WaitForAsyncUtils.waitForAsyncFx(30_000, cellars::close);
    }

    void begin(Locale locale, String... arguments) {
        HostEnvironment host = new HostEnvironment(
                Map.of("XDG_CONFIG_HOME", home.resolve("settings").toString()), "Linux", home, home, locale);
        WaitForAsyncUtils.waitForAsyncFx(30_000, () -> {
            cellars = new CellarSwitch(stage, host, CLOCK, new FixedFiles(home.resolve("logger.csv")));
            cellars.begin(WindowRequest.of(List.of(arguments)));
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    Path folder(Cellar cellar) {
        Path folder = home.resolve("cellar");
        CellarStore.create(folder, cellar, CLOCK, "test").close();
        return folder;
    }

    /** As it lies on the disk, once the window let go of it. */
    Cellar onDisk(Path folder) {
        leave();
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            return store.cellar();
        }
    }

    /** The one cellar in the usual folder; not looked into, as the window may be saving there. */
    Path onlyFolder() throws IOException {
        try (var cellars = Files.list(home.resolve("Undercroft"))) {
            return cellars.findFirst().orElseThrow();
        }
    }

    /** Semicolons, a decimal comma, the day first: five days of 29 °C in a cupboard of 18 °C. */
    void foreignLog() throws IOException {
        StringBuilder log = new StringBuilder("Datum;Uhrzeit;Temperatur °C;Feuchte %\n");
        Instant first = NOW.minus(Duration.ofDays(60));
        for (int hour = 0; hour <= 60 * 24; hour++) {
            var local = first.plus(Duration.ofHours(hour)).atZone(ZoneOffset.UTC);
            int day = hour / 24;
            String celsius = day >= 30 && day < 35 ? "29,0" : "18," + hour % 3;
            log.append(String.format(
                    Locale.ROOT,
                    "%02d.%02d.%d;%02d:%02d;%s;61%n",
                    local.getDayOfMonth(),
                    local.getMonthValue(),
                    local.getYear(),
                    local.getHour(),
                    local.getMinute(),
                    celsius));
        }
        Files.writeString(home.resolve("logger.csv"), log);
    }
}
