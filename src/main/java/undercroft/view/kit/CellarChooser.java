package undercroft.view.kit;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Cellar;
import undercroft.wording.Language;

/** Leads from the cellar that is open to another one. For the window's thread; nothing here waits for a disk. */
public interface CellarChooser {
    /** Turns to the page on which one begins. */
    void startPage();

    /** Makes a new cellar in a new or empty folder and opens it. */
    void create(Cellar cellar, Path folder);

    /** Asks for a folder, beginning with one that need not be there yet. */
    Optional<Path> askFolder(String title, Path begin);

    /** Asks for a folder and opens the cellar in it. */
    void open();

    /** Opens the demo. */
    void demo();

    /** Whether the cellar that is open is the demo. */
    boolean isDemo();

    /** Opens the cellar that is only looked at once more, to change it. */
    void openAgain();

    /** Leads back to the cellar that is still open; empty where there is none. */
    Optional<Runnable> back();

    /** Asks for a folder and writes the cellar that is open there too, for when its own cannot be written. */
    void saveElsewhere();

    /** What the window was told to speak. */
    Language language();

    /** Shows all of the window in another language, and keeps it for the next start. */
    void speak(Language language);

    /** Cellars opened before, newest first, without the one that is open. */
    List<Recent> recent();

    void reopen(Recent recent);

    /** A cellar opened before: its name, and the folder it lies in as shown. */
    record Recent(String name, String folder) {}
}
