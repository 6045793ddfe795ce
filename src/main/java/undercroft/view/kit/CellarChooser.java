package undercroft.view.kit;

import java.util.List;

/** Leaves the cellar that is open for another one. For the window's thread. */
public interface CellarChooser {
    /** Asks for a folder and makes an empty cellar in it. */
    void create();

    /** Asks for a folder and opens the cellar in it. */
    void open();

    /** Cellars opened before, newest first, without the one that is open. */
    List<Recent> recent();

    void reopen(Recent recent);

    /** A cellar opened before: its name, and the folder it lies in as shown. */
    record Recent(String name, String folder) {}
}
