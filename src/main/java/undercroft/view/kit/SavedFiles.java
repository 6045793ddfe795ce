package undercroft.view.kit;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Function;
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
        save(over, suggestedName, ending, content, bytes -> bytes, saved -> {});
    }

    /**
     * As the other, of something that is more than its bytes.
     *
     * @param whenSaved told on the window's thread
     */
    public <T> void save(
            Window over,
            String suggestedName,
            String ending,
            Callable<T> content,
            Function<T, byte[]> bytes,
            Consumer<T> whenSaved) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(messages.of("save.title"));
        chooser.setInitialFileName(suggestedName + "." + ending);
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(messages.of("save.kind." + ending), "*." + ending));
        File chosen = chooser.showSaveDialog(over);
        if (chosen != null) {
            write(withEnding(chosen.toPath(), ending), content, bytes, whenSaved);
        }
    }

    void write(Path file, Callable<byte[]> content) {
        write(file, content, bytes -> bytes, saved -> {});
    }

    private <T> void write(Path file, Callable<T> content, Function<T, byte[]> bytes, Consumer<T> whenSaved) {
        context.tasks()
                .run(
                        () -> {
                            T made = content.call();
                            return new Written<>(Export.ofTexts().bytes(file, bytes.apply(made)), made);
                        },
                        written -> {
                            whenSaved.accept(written.what());
                            context.faults().tell(messages.of("save.done", written.file()));
                        },
                        context.faults()::show);
    }

    private record Written<T>(Path file, T what) {}

    /** Some systems' dialogs leave out the ending that was not typed; without it no program opens the file. */
    public static Path withEnding(Path file, String ending) {
        String name = String.valueOf(file.getFileName());
        return name.toLowerCase(Locale.ROOT).endsWith("." + ending) ? file : file.resolveSibling(name + "." + ending);
    }
}
