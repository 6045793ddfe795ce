package undercroft.view.kit;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import undercroft.store.Export;
import undercroft.wording.Messages;

/** Asks where a file shall go, writes it in the background, and tells what became of it. */
public final class SavedFiles {
    private final WindowContext context;
    private final Messages messages;

    public SavedFiles(WindowContext context, Messages messages) {
        this.context = context;
        this.messages = messages;
    }

    /**
     * Saves one file.
     *
     * @param ending such as {@code png}; put behind a name that has none
     * @param content made in the background
     */
    public void save(Window over, String suggestedName, String ending, Callable<byte[]> content) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(messages.of("save.title"));
        chooser.setInitialFileName(suggestedName + "." + ending);
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(messages.of("save.kind." + ending), "*." + ending));
        File chosen = chooser.showSaveDialog(over);
        if (chosen != null) {
            write(withEnding(chosen.toPath(), ending), content);
        }
    }

    void write(Path file, Callable<byte[]> content) {
        context.tasks()
                .run(
                        () -> Export.ofTexts().bytes(file, content.call()),
                        written -> context.faults().tell(messages.of("save.done", written)),
                        context.faults()::show);
    }

    /** Some systems' dialogs leave out the ending that was not typed; without it no program opens the file. */
    public static Path withEnding(Path file, String ending) {
        String name = String.valueOf(file.getFileName());
        return name.toLowerCase(Locale.ROOT).endsWith("." + ending) ? file : file.resolveSibling(name + "." + ending);
    }
}
