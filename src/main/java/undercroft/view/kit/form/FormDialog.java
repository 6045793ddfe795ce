package undercroft.view.kit.form;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;
import undercroft.view.kit.Looks;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/** A small window over the main one: a title, what is asked, and buttons. Escape leaves it without a change. */
public final class FormDialog {
    private final Messages messages;
    static final double WIDTH = 600;
    private static final double ROOM_AROUND = 120;

    private final Stage stage = new Stage();
    private final VBox root = new VBox();
    private final HBox buttons = new HBox(8);
    private final Region middle = new Region();
    private final ScrollPane scroll;
    private final Button cancel = new Button();
    private final HBox leaving = new HBox(8);
    private BooleanSupplier filled = () -> false;

    FormDialog(Messages messages, Window owner, String title, Node content, boolean dark) {
        this.messages = messages;
        cancel.setText(messages.of("form.button.close"));
        stage.initOwner(owner);
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle(title);
        Label heading = new Label(title);
        heading.getStyleClass().add("form-title");
        heading.setWrapText(true);
        scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        HBox.setHgrow(middle, Priority.ALWAYS);
        buttons.getStyleClass().add("form-buttons");
        buttons.getChildren().add(middle);
        root.getStyleClass().add("form");
        root.getChildren().addAll(heading, scroll, buttons);
        root.setPrefWidth(WIDTH);
        Scene scene = new Scene(root);
        Looks.dress(scene, dark);
        scene.getStylesheets().add(FormGrid.SHEET);
        stage.setScene(scene);
        cancel.setId("form-cancel");
        cancel.setCancelButton(true);
        cancel.setOnAction(event -> leave());
        stage.setOnCloseRequest(event -> {
            if (filled.getAsBoolean()) {
                event.consume();
                leave();
            }
        });
        buttons.getChildren().add(cancel);
        content.layoutBoundsProperty().addListener((property, before, after) -> {
            if (before.getHeight() != after.getHeight()) {
                fit();
            }
        });
        scene.focusOwnerProperty().addListener((property, before, focused) -> bringIntoView(focused));
    }

    /** Asks before what was typed is thrown away. */
    void askBeforeLeaving(BooleanSupplier isFilled) {
        filled = isFilled;
        Label question = new Label(messages.of("form.leave.question"));
        question.setId("form-leave");
        question.setWrapText(true);
        question.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(question, Priority.ALWAYS);
        question.setMaxWidth(Double.MAX_VALUE);
        Button stay = new Button(messages.of("form.leave.stay"));
        stay.setId("form-stay");
        stay.setMinWidth(Region.USE_PREF_SIZE);
        stay.setOnAction(event -> askToLeave(false));
        Button drop = new Button(messages.of("form.leave.drop"));
        drop.setId("form-drop");
        drop.setMinWidth(Region.USE_PREF_SIZE);
        drop.setOnAction(event -> stage.close());
        leaving.getChildren().setAll(question, stay, drop);
        leaving.getStyleClass().add("form-buttons");
        leaving.setAlignment(Pos.CENTER_LEFT);
    }

    private void leave() {
        if (filled.getAsBoolean()) {
            askToLeave(true);
        } else {
            stage.close();
        }
    }

    private void askToLeave(boolean asks) {
        root.getChildren().set(root.getChildren().size() - 1, asks ? leaving : buttons);
        if (asks) {
            leaving.getChildren().get(1).requestFocus();
        } else {
            cancel.requestFocus();
        }
    }

    /** The button that Enter presses. */
    public Button confirm(String words, Runnable act) {
        Button confirm = new Button(words);
        confirm.setId("form-save");
        confirm.setDefaultButton(true);
        cancel.setText(messages.of("form.button.cancel"));
        confirm.setOnAction(event -> act.run());
        buttons.getChildren().add(confirm);
        Shortcut.CONFIRM
                .keys()
                .forEach(key -> stage.getScene().getAccelerators().put(key, confirm::fire));
        return confirm;
    }

    /** A quiet button on the far side of the others. */
    Button aside(String id, String words, Runnable act) {
        Button button = new Button(words);
        button.setId(id);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> act.run());
        buttons.getChildren().add(0, button);
        return button;
    }

    /** Something between what is asked and the buttons. */
    void below(Node node) {
        root.getChildren().add(root.getChildren().size() - 1, node);
    }

    public void show(Optional<Node> first) {
        Window owner = stage.getOwner();
        Rectangle2D screen = screen();
        stage.setMaxHeight(screen.getHeight() - ROOM_AROUND / 2);
        scroll.setMaxHeight(mostHeight() + 2);
        stage.setOnShown(event -> {
            first.ifPresent(Node::requestFocus);
            if (owner != null) {
                stage.setX(Math.max(screen.getMinX(), owner.getX() + (owner.getWidth() - stage.getWidth()) / 2));
                stage.setY(Math.max(screen.getMinY(), owner.getY() + (owner.getHeight() - stage.getHeight()) / 3));
            }
        });
        stage.show();
    }

    public void close() {
        stage.close();
    }

    public Stage stage() {
        return stage;
    }

    /** Lets the window take the height its contents now want, as far as the screen allows. */
    private void fit() {
        Platform.runLater(() -> {
            scroll.setPrefViewportHeight(
                    Math.min(mostHeight(), scroll.getContent().getLayoutBounds().getHeight()));
            stage.sizeToScene();
            stayOnScreen();
        });
    }

    /** A window that has grown is not to end below the screen, where its buttons are out of reach. */
    private void stayOnScreen() {
        Rectangle2D screen = screen();
        double lowest = screen.getMaxY() - stage.getHeight();
        if (stage.isShowing() && stage.getY() > lowest) {
            stage.setY(Math.max(screen.getMinY(), lowest));
        }
    }

    private double mostHeight() {
        return screen().getHeight() - 2 * ROOM_AROUND;
    }

    /** The screen of the window it lies over. */
    private Rectangle2D screen() {
        Window owner = stage.getOwner();
        return owner == null
                ? Screen.getPrimary().getVisualBounds()
                : Screen.getScreensForRectangle(owner.getX(), owner.getY(), owner.getWidth(), owner.getHeight())
                        .stream()
                        .findFirst()
                        .orElse(Screen.getPrimary())
                        .getVisualBounds();
    }

    private void bringIntoView(Node focused) {
        Node content = scroll.getContent();
        if (focused == null || !isInside(focused, content)) {
            return;
        }
        double height = content.getLayoutBounds().getHeight()
                - scroll.getViewportBounds().getHeight();
        if (height <= 0) {
            return;
        }
        double top = content.sceneToLocal(focused.localToScene(0, 0)).getY();
        double bottom = top + focused.getLayoutBounds().getHeight();
        double shown = scroll.getVvalue() * height;
        if (top < shown + 24) {
            scroll.setVvalue(Math.max(0, (top - 24) / height));
        } else if (bottom > shown + scroll.getViewportBounds().getHeight() - 24) {
            scroll.setVvalue(
                    Math.min(1, (bottom + 24 - scroll.getViewportBounds().getHeight()) / height));
        }
    }

    private static boolean isInside(Node node, Node parent) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (each == parent) {
                return true;
            }
        }
        return false;
    }
}
