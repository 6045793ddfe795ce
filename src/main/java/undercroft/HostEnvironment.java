package undercroft;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import undercroft.store.Export;

/** What only the outside can tell: the display, the libraries, the language, where settings and scratch files belong. */
record HostEnvironment(Map<String, String> environment, String system, Path home, Path temporary, Locale locale) {
    private static final List<String> LIBRARY_FOLDERS =
            List.of("/usr/lib", "/usr/lib64", "/lib", "/lib64", "/usr/local/lib", "/run/current-system/sw/lib");
    private static final String GTK = "libgtk-3.so.0";

    static HostEnvironment here() {
        return new HostEnvironment(
                System.getenv(),
                System.getProperty("os.name", ""),
                Path.of(System.getProperty("user.home", ".")),
                Path.of(System.getProperty("java.io.tmpdir", ".")),
                Locale.getDefault());
    }

    /** Whether a window can be opened: always taken for granted but on Linux, where a display and GTK 3 are looked for. */
    boolean hasDisplay() {
        if (!system.toLowerCase(Locale.ROOT).contains("linux")) {
            return true;
        }
        String display = environment.getOrDefault("DISPLAY", "");
        return !display.isBlank() && hasGtk();
    }

    private boolean hasGtk() {
        String more = environment.getOrDefault("LD_LIBRARY_PATH", "");
        return Stream.concat(Stream.of(more.split(":")).filter(path -> !path.isBlank()), LIBRARY_FOLDERS.stream())
                .map(Path::of)
                .anyMatch(HostEnvironment::holdsGtk);
    }

    private static boolean holdsGtk(Path folder) {
        if (Files.exists(folder.resolve(GTK))) {
            return true;
        }
        try (Stream<Path> below = Files.list(folder)) {
            return below.filter(path -> path.getFileName().toString().endsWith("-linux-gnu"))
                    .anyMatch(path -> Files.exists(path.resolve(GTK)));
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** Where people keep what is theirs. */
    Path documents() {
        Path documents = home.resolve("Documents");
        return Files.isDirectory(documents) ? documents.resolve("Undercroft") : home.resolve("Undercroft");
    }

    /** Where a program keeps what is of this machine only, such as its log. */
    Path stateFolder() {
        String state = environment.getOrDefault("XDG_STATE_HOME", environment.getOrDefault("LOCALAPPDATA", ""));
        return (state.isBlank() ? home.resolve(".local/state") : Path.of(state)).resolve("undercroft");
    }

    Path settingsFolder() {
        String config = environment.getOrDefault("XDG_CONFIG_HOME", environment.getOrDefault("APPDATA", ""));
        return (config.isBlank() ? home.resolve(".config") : Path.of(config)).resolve("undercroft");
    }

    /** A new folder that no other user of the machine can foresee or look into. */
    Path privateFolder() {
        return Export.ofTexts().privateFolder(temporary);
    }
}
