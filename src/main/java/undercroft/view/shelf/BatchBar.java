package undercroft.view.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import undercroft.app.shelf.BatchPage;
import undercroft.view.kit.Widths;
import undercroft.wording.Messages;

/** Back to the shelf, the name of the batch and where it stands, and all that can be done with it. */
final class BatchBar extends HBox {
    private final Messages messages;

    /** Below this width every action is in one menu. */
    private static final double WIDE = 760;

    private static final double MOST_NAME = 340;
    private static final int MOST_BUTTONS = 3;

    private final List<Action> actions = new ArrayList<>();
    private Button toShelf;
    private final HBox buttons = new HBox();
    private final Runnable back;
    private boolean wide = true;

    /** Something to do; {@code words} end in an ellipsis where a dialog asks for more. */
    record Action(String id, String words, Runnable act) {}

    BatchBar(Messages messages, Runnable back) {
        this.messages = messages;
        this.back = back;
        getStyleClass().add("batch-bar");
        setMinWidth(0);
        setAlignment(Pos.CENTER_LEFT);
        buttons.setAlignment(Pos.CENTER_RIGHT);
        buttons.setMinWidth(USE_PREF_SIZE);
        Widths.follow(this, width -> {
            if (wide != width >= WIDE) {
                wide = !wide;
                fill();
            }
        });
    }

    /** The first three stand as buttons where there is room. */
    void show(Optional<BatchPage> page, List<Action> all) {
        actions.clear();
        actions.addAll(all);
        toShelf = new Button(messages.of("batch.back.button"));
        toShelf.setId("back");
        toShelf.setMinWidth(USE_PREF_SIZE);
        toShelf.getStyleClass().add("quiet");
        toShelf.setAccessibleText(messages.of("batch.back.sentence"));
        toShelf.setTooltip(new Tooltip(toShelf.getAccessibleText()));
        toShelf.setOnAction(event -> back.run());
        getChildren().setAll(toShelf);
        page.ifPresent(shown -> {
            Label name = new Label(shown.title());
            name.getStyleClass().add("batch-title");
            name.setId("batch-title");
            name.setMinWidth(USE_PREF_SIZE);
            name.setMaxWidth(MOST_NAME);
            Label where = new Label(shown.where());
            where.setId("batch-where");
            where.getStyleClass().add("faint");
            where.setTooltip(new Tooltip(shown.where()));
            where.setMinWidth(0);
            where.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(where, Priority.ALWAYS);
            getChildren().addAll(name, where, buttons);
        });
        fill();
    }

    /** Puts the keyboard on the way back. */
    void takeFocus() {
        toShelf.requestFocus();
    }

    private void fill() {
        buttons.getChildren().clear();
        int first = wide ? Math.min(MOST_BUTTONS, actions.size()) : 0;
        for (Action action : actions.subList(0, first)) {
            Button button = new Button(action.words());
            button.setId(action.id());
            button.setMinWidth(USE_PREF_SIZE);
            button.getStyleClass().add("quiet");
            button.setOnAction(event -> action.act().run());
            buttons.getChildren().add(button);
        }
        if (actions.size() > first) {
            MenuButton more = new MenuButton(messages.of(first == 0 ? "batch.actions.all" : "batch.actions.menu"));
            more.setId("batch-more");
            more.setMinWidth(USE_PREF_SIZE);
            more.getStyleClass().add("quiet");
            for (Action action : actions.subList(first, actions.size())) {
                MenuItem item = new MenuItem(action.words());
                item.setId(action.id());
                item.setOnAction(event -> action.act().run());
                more.getItems().add(item);
            }
            buttons.getChildren().add(more);
        }
    }
}
