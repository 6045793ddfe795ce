package undercroft.view.edit;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import undercroft.wording.Messages;

/** Asks in the system's own windows. */
public final class SystemFileQuestions implements FileQuestions {
    @Override
    public Optional<Path> folder(Window over, String title, Path begin) {
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

    @Override
    public Optional<Path> loggerFile(Window over, Messages messages) {
        FileChooser files = new FileChooser();
        files.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter(
                                messages.of("form.import.files"), "*.csv", "*.txt", "*.tsv", "*.log"),
                        new FileChooser.ExtensionFilter(messages.of("form.import.all-files"), "*"));
        return Optional.ofNullable(files.showOpenDialog(over)).map(File::toPath);
    }
}
