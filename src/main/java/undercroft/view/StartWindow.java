package undercroft.view;

import java.nio.file.Path;
import java.time.ZoneId;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Scene;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import undercroft.app.Faults;
import undercroft.quantity.UnitSystem;
import undercroft.session.BackgroundTasks;
import undercroft.view.help.HelpWindow;
import undercroft.view.kit.CellarChooser;
import undercroft.view.kit.Looks;
import undercroft.view.start.StartView;
import undercroft.wording.Messages;

/** The window while no cellar is shown. */
public final class StartWindow {
    private final Messages messages;
    private final Scene scene;
    private final StartView page;

    /** See {@link StartView}; faults are said above it. */
    public StartWindow(
            Messages messages,
            CellarChooser chooser,
            Faults faults,
            ZoneId zone,
            Path documents,
            BackgroundTasks tasks,
            BooleanProperty dark) {
        this.messages = messages;
        HelpWindow help = new HelpWindow(messages, () -> UnitSystem.METRIC, zone, tasks, dark);
        page = new StartView(messages, chooser, zone, documents, dark, () -> help.show(scene()));
        VBox above = new VBox(new FaultBar(messages, faults));
        above.getStyleClass().add("start-above");
        VBox.setVgrow(page, Priority.ALWAYS);
        VBox root = new VBox(above, page);
        root.getStyleClass().add("window");
        root.setId("start-window");
        scene = new Scene(root);
        help.listenIn(scene);
        Looks.dress(scene, dark.get());
        dark.addListener((property, before, after) -> Looks.dress(scene, after));
    }

    private Scene scene() {
        return scene;
    }

    public void show(Stage stage) {
        stage.titleProperty().unbind();
        stage.setTitle(messages.of("app.name"));
        stage.setScene(scene);
        stage.show();
        page.takeFocus();
    }
}
