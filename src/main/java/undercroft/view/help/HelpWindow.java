package undercroft.view.help;

import java.time.ZoneId;
import java.util.Map;
import java.util.function.Supplier;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import undercroft.app.help.HelpTopics;
import undercroft.app.help.HelpViewModel;
import undercroft.quantity.UnitSystem;
import undercroft.session.BackgroundTasks;
import undercroft.view.kit.Looks;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** The help in a window of its own beside the work, made when it is first asked for; F1 opens it at the keys. */
public final class HelpWindow {
    private static final double WIDTH = 920;
    private static final double HEIGHT = 640;

    private final Messages messages;
    private final Supplier<UnitSystem> units;
    private final ZoneId zone;
    private final BackgroundTasks tasks;
    private final ObservableBooleanValue dark;
    private Stage stage;
    private HelpView view;
    private HelpViewModel model;

    /**
     * The help of one window.
     *
     * @param units in which its tables are written, asked when it is made
     * @param tasks where the texts of licences are read
     */
    public HelpWindow(
            Messages messages,
            Supplier<UnitSystem> units,
            ZoneId zone,
            BackgroundTasks tasks,
            ObservableBooleanValue dark) {
        this.messages = messages;
        this.units = units;
        this.zone = zone;
        this.tasks = tasks;
        this.dark = dark;
    }

    /** Opens the list of keys over a window where the key for it is pressed there. */
    public void listenIn(Scene scene) {
        Shortcut.HELP
                .keys()
                .forEach(key -> scene.getAccelerators().put(key, () -> {
                    show(scene);
                    model.open(HelpTopics.KEYS);
                }));
    }

    /** Opens the help where it was left, over the window of a scene. */
    public void show(Scene scene) {
        if (stage == null) {
            make(scene);
        }
        stage.show();
        stage.toFront();
        view.takeFocus();
    }

    private void make(Scene over) {
        QuantityFormat format = QuantityFormat.of(messages, units.get(), zone);
        model = new HelpViewModel(HelpTopics.of(messages, format, new KeyWords(messages).blocks()), messages.locale());
        view = new HelpView(model, messages, tasks, dark);
        stage = new Stage();
        stage.initOwner(over.getWindow());
        stage.setTitle(messages.of("help.title"));
        Scene scene = new Scene(view, Math.min(WIDTH, over.getWidth()), Math.min(HEIGHT, over.getHeight()));
        Looks.dress(scene, dark.get());
        dark.addListener((property, before, after) -> Looks.dress(scene, after));
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (Shortcut.CLOSE.matches(event)) {
                stage.close();
                event.consume();
            }
        });
        Shortcut.HELP.keys().forEach(key -> scene.getAccelerators().put(key, () -> model.open(HelpTopics.KEYS)));
        Map<Shortcut, Runnable> own = Map.of(Shortcut.FIND, view::takeFocus);
        own.forEach((shortcut, act) ->
                shortcut.keys().forEach(key -> scene.getAccelerators().put(key, act)));
        stage.setScene(scene);
    }
}
