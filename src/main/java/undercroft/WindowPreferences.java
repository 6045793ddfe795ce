package undercroft;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Properties;
import undercroft.app.LastView;
import undercroft.app.Pages.Page;
import undercroft.app.WindowBounds;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.wording.Language;

/**
 * What the window looked like last, in {@code window.properties} of the user's settings folder. Nothing in it is precious:
 * what cannot be read is as it is the first time, and what cannot be written is not kept.
 */
record WindowPreferences(Path folder) {
    private static final String FILE = "window.properties";
    private static final String LANGUAGE = "language";
    private static final String DARK = "dark";
    private static final String MAXIMIZED = "maximized";
    private static final String BOUNDS = "bounds";
    private static final String PAGE = "page";
    private static final String BATCH = "batch";

    /** Language, colours, place on the desktop, page and batch. */
    record Kept(Language language, boolean dark, boolean maximized, Optional<WindowBounds> bounds, LastView view) {
        static final Kept NOTHING = new Kept(Language.SYSTEM, false, false, Optional.empty(), LastView.SHELF);

        Kept speaking(Language now) {
            return new Kept(now, dark, maximized, bounds, view);
        }

        Kept withDark(boolean nowDark) {
            return new Kept(language, nowDark, maximized, bounds, view);
        }

        Kept withView(LastView last) {
            return new Kept(language, dark, maximized, bounds, last);
        }

        Kept at(WindowBounds where) {
            return new Kept(language, dark, false, Optional.of(where), view);
        }

        Kept over(boolean wholeScreen) {
            return new Kept(language, dark, wholeScreen, bounds, view);
        }
    }

    Kept read() {
        try {
            byte[] bytes = new WholeFile(Disk.REAL).bytes(folder.resolve(FILE), FILE, WholeFile.MOST_SMALL_BYTES);
            Properties kept = new Properties();
            kept.load(new StringReader(new String(bytes, StandardCharsets.UTF_8)));
            return new Kept(
                    Language.of(kept.getProperty(LANGUAGE, "")).orElse(Language.SYSTEM),
                    Boolean.parseBoolean(kept.getProperty(DARK)),
                    Boolean.parseBoolean(kept.getProperty(MAXIMIZED)),
                    bounds(kept.getProperty(BOUNDS, "")),
                    new LastView(page(kept.getProperty(PAGE, "")), kept.getProperty(BATCH, "")));
        } catch (IOException | IllegalArgumentException | InvalidInput nothingKept) {
            return Kept.NOTHING;
        }
    }

    private static Optional<WindowBounds> bounds(String text) {
        double[] sides = Arrays.stream(text.isBlank() ? new String[0] : text.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        return sides.length == 4
                ? Optional.of(new WindowBounds(sides[0], sides[1], sides[2], sides[3]))
                        .filter(WindowBounds::isSound)
                : Optional.empty();
    }

    private static Page page(String name) {
        return Arrays.stream(Page.values())
                .filter(page -> page.name().equals(name))
                .findFirst()
                .orElse(Page.SHELF);
    }

    /** Keeps it where it can. Blocks on a disk. */
    void keep(Kept kept) {
        Properties lines = new Properties();
        lines.setProperty(LANGUAGE, kept.language().id());
        lines.setProperty(DARK, Boolean.toString(kept.dark()));
        lines.setProperty(MAXIMIZED, Boolean.toString(kept.maximized()));
        kept.bounds()
                .ifPresent(
                        at -> lines.setProperty(BOUNDS, at.x() + " " + at.y() + " " + at.width() + " " + at.height()));
        lines.setProperty(PAGE, kept.view().page().name());
        lines.setProperty(BATCH, kept.view().batchId());
        try {
            StringWriter text = new StringWriter();
            lines.store(text, null);
            AtomicFile files = new AtomicFile(Disk.REAL);
            files.makeFolders(folder, FILE);
            files.replace(folder.resolve(FILE), text.toString().getBytes(StandardCharsets.UTF_8), FILE);
        } catch (IOException | InvalidInput notKept) {
            // See the class comment.
        }
    }
}
