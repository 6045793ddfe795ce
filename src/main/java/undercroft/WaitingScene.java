package undercroft;

import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import undercroft.view.kit.Looks;
import undercroft.wording.Messages;

/** What the window shows until the first cellar is read. */
final class WaitingScene {
    private WaitingScene() {}

    static Scene of(Messages messages, boolean dark) {
        StackPane waiting = new StackPane(new Label(messages.of("start.opening.text")));
        waiting.getStyleClass().addAll("window", "opening");
        Scene scene = new Scene(waiting);
        Looks.dress(scene, dark);
        return scene;
    }
}
