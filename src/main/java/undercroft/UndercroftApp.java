package undercroft;

import java.time.Clock;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import javafx.stage.Stage;
import undercroft.command.WindowRequest;
import undercroft.view.edit.SystemFileQuestions;
import undercroft.view.kit.Looks;

/** The window's program: hands the stage to what leads from cellar to cellar. */
public final class UndercroftApp extends Application {
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private CellarSwitch cellars;

    /**
     * Opens the window and returns when it is closed.
     *
     * @return false when the toolkit could not start
     */
    static boolean open(WindowRequest request) {
        // The toolkit warns that it was found on the class path, which is where it belongs here.
        TOOLKIT.setLevel(Level.OFF);
        try {
            launch(UndercroftApp.class, request.arguments());
            return true;
        } catch (RuntimeException | LinkageError notStarted) {
            return false;
        }
    }

    @Override
    public void start(Stage stage) {
        Looks.loadFonts();
        stage.getIcons().setAll(Looks.icons());
        cellars = new CellarSwitch(stage, HostEnvironment.here(), Clock.systemUTC(), new SystemFileQuestions());
        // The border of the window: what nobody caught is told in one sentence, on whatever thread it was.
        Thread.UncaughtExceptionHandler border = (thread, trouble) -> cellars.tell(trouble);
        Thread.currentThread().setUncaughtExceptionHandler(border);
        Thread.setDefaultUncaughtExceptionHandler(border);
        cellars.begin(WindowRequest.of(getParameters().getRaw()));
    }

    @Override
    public void stop() {
        cellars.close();
    }
}
