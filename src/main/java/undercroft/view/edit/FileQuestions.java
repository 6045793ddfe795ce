package undercroft.view.edit;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Window;
import undercroft.wording.Messages;

/** Asks a person for files and folders; empty when the person thinks better of it. */
public interface FileQuestions {
    /** A folder; the question begins there, or at the nearest folder above that exists. */
    Optional<Path> folder(Window over, String title, Path begin);

    /** A logger's file to be read. */
    Optional<Path> loggerFile(Window over, Messages messages);
}
