package undercroft;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;

/** Asks for a folder in the system's own window. */
final class FolderQuestion {
    private FolderQuestion() {}

    static Optional<Path> ask(Stage over, String title, Path begin) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        Path there = begin;
        while (there != null && !Files.isDirectory(there)) {
            there = there.getParent();
        }
        chooser.setInitialDirectory(there == null ? null : there.toFile());
        File chosen = chooser.showDialog(over);
        return Optional.ofNullable(chosen).map(File::toPath);
    }
}
