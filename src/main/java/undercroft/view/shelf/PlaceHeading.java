package undercroft.view.shelf;

import javafx.geometry.Pos;
import javafx.geometry.Side;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import undercroft.app.shelf.ShelfPlan;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/** The flat heading of a place; a click, the right button or Enter anywhere on it opens what can be done with the place. */
final class PlaceHeading extends HBox {
    private final ContextMenu menu = new ContextMenu();

    private PlaceHeading(String name, String climate, Label... signs) {
        super(8);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("place-heading");
        Label title = new Label(name);
        title.getStyleClass().add("place-name");
        Label temperature = new Label(climate);
        temperature.getStyleClass().add("place-climate");
        temperature.setMinWidth(USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        getChildren().add(title);
        getChildren().addAll(signs);
        getChildren().addAll(space, temperature);
    }

    /** Of what stands in no place: plans, finished batches. */
    static PlaceHeading plain(String name) {
        return new PlaceHeading(name, "");
    }

    static PlaceHeading of(ShelfPlan.Plank plank, Messages messages, Label sensor, MenuItem... items) {
        PlaceHeading heading = new PlaceHeading(plank.name(), plank.climate(), sensor);
        heading.getStyleClass().add("opens");
        heading.setId("place-" + plank.placeId());
        heading.setFocusTraversable(true);
        heading.setAccessibleRole(AccessibleRole.MENU_BUTTON);
        heading.setAccessibleText(messages.of("shelf.plank.sentence", plank.name(), plank.climate()));
        heading.menu.getItems().setAll(items);
        heading.setOnMouseClicked(event -> {
            if (event.getButton() == MouseButton.PRIMARY && event.isStillSincePress()) {
                heading.open();
            }
        });
        heading.setOnContextMenuRequested(event -> {
            heading.menu.show(heading, event.getScreenX(), event.getScreenY());
            event.consume();
        });
        heading.setOnKeyPressed(event -> {
            if (Shortcut.OPEN_PLACE.matches(event)) {
                heading.open();
                event.consume();
            }
        });
        return heading;
    }

    void open() {
        requestFocus();
        menu.show(this, Side.BOTTOM, 0, 2);
    }

    ContextMenu menu() {
        return menu;
    }
}
