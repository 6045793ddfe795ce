package undercroft.view.edit;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Window;
import undercroft.wording.Messages;

/** Answers every question for a file with the same one. */
public final class FixedFiles implements FileQuestions {
    private final Optional<Path> loggerFile;

    /** Answers none. */
    public FixedFiles() {
        loggerFile = Optional.empty();
    }

    public FixedFiles(Path loggerFile) {
        this.loggerFile = Optional.of(loggerFile);
    }

    @Override
    public Optional<Path> folder(Window over, String title, Path begin) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> loggerFile(Window over, Messages messages) {
        return loggerFile;
    }
}
