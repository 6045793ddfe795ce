package undercroft;

import java.util.List;
import javafx.animation.PauseTransition;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import undercroft.app.WindowBounds;

/** Where the window stands on the desktop: where it stood last, or in the middle, and always with all of it on a screen. */
record Placement(Stage stage) {
    private static final double USUAL_WIDTH = 1280;
    private static final double USUAL_HEIGHT = 800;
    private static final Duration CHECK = Duration.millis(150);
    private static final int CHECKS = 6;

    /** Before the window is shown for the first time. */
    void begin(WindowPreferences.Kept kept) {
        List<WindowBounds> screens =
                Screen.getScreens().stream().map(Placement::free).toList();
        WindowBounds primary = free(Screen.getPrimary());
        WindowBounds at = kept.bounds()
                .map(wanted -> wanted.within(screens))
                .orElseGet(() -> primary.middle(USUAL_WIDTH, USUAL_HEIGHT));
        stage.setMaximized(kept.maximized());
        put(at);
        stage.setOnShown(event -> {
            stage.setOnShown(null);
            stage.setMinWidth(Math.min(WindowBounds.LEAST_WIDTH, primary.width()));
            stage.setMinHeight(Math.min(WindowBounds.LEAST_HEIGHT, primary.height()));
            if (!kept.maximized()) {
                holdTo(at, CHECKS);
            }
        });
    }

    /** Some desktops forget a size that was told before the window stands there, and open it at its least. */
    private void holdTo(WindowBounds at, int checks) {
        PauseTransition wait = new PauseTransition(CHECK);
        wait.setOnFinished(event -> {
            boolean forgotten = (stage.getWidth() <= WindowBounds.LEAST_WIDTH && at.width() > WindowBounds.LEAST_WIDTH)
                    || (stage.getHeight() <= WindowBounds.LEAST_HEIGHT && at.height() > WindowBounds.LEAST_HEIGHT);
            if (forgotten) {
                // A size equal to the one told before would be taken for no change.
                stage.setWidth(at.width() - 1);
                stage.setHeight(at.height() - 1);
                put(at);
            }
            if (checks > 1) {
                holdTo(at, checks - 1);
            }
        });
        wait.play();
    }

    private void put(WindowBounds at) {
        stage.setX(at.x());
        stage.setY(at.y());
        stage.setWidth(at.width());
        stage.setHeight(at.height());
    }

    private static WindowBounds free(Screen screen) {
        Rectangle2D free = screen.getVisualBounds();
        return new WindowBounds(free.getMinX(), free.getMinY(), free.getWidth(), free.getHeight());
    }

    /** What is to be remembered; a window over the whole screen goes back to the size it had before. */
    WindowPreferences.Kept of(WindowPreferences.Kept before) {
        if (stage.isMaximized() || stage.isFullScreen() || stage.isIconified()) {
            return before.over(stage.isMaximized());
        }
        WindowBounds now = new WindowBounds(stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight());
        return now.isSound() ? before.at(now) : before;
    }
}
