package undercroft.view.bottling;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import undercroft.view.kit.SavedFiles;
import undercroft.wording.Messages;

/** Asks with the system's own dialog. */
record FilePicker(Messages messages) implements Printouts.Picker {
    @Override
    public Optional<Path> pick(Window owner, String suggestedName) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(messages.of("bottling.papers.where"));
        chooser.setInitialFileName(suggestedName);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("HTML", "*.html"));
        File chosen = chooser.showSaveDialog(owner);
        return Optional.ofNullable(chosen).map(File::toPath).map(file -> SavedFiles.withEnding(file, "html"));
    }
}
