package undercroft.view.shelf;

import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.cellar.Place;
import undercroft.view.kit.Editors;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;

/** Title of the shelf, what comes first on it, and what can be added. */
final class ShelfHeaderView extends HBox {
    ShelfHeaderView(ShelfViewModel model, WindowContext context) {
        getStyleClass().add("shelf-header");
        setAlignment(Pos.CENTER_LEFT);
        Label title = new Label(context.messages().of("shelf.title"));
        title.getStyleClass().add("section-title");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        title.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(title, space, order(model, context.messages()), add(context));
    }

    private static ChoiceBox<ShelfPlan.Order> order(ShelfViewModel model, Messages messages) {
        ChoiceBox<ShelfPlan.Order> order = new ChoiceBox<>();
        order.getItems().addAll(ShelfPlan.Order.values());
        order.setConverter(new StringConverter<>() {
            @Override
            public String toString(ShelfPlan.Order each) {
                return each == null
                        ? ""
                        : switch (each) {
                            case ATTENTION -> messages.of("shelf.order.attention");
                            case PLACE -> messages.of("shelf.order.place");
                            case NAME -> messages.of("shelf.order.name");
                            case AGE -> messages.of("shelf.order.age");
                        };
            }

            @Override
            public ShelfPlan.Order fromString(String text) {
                throw new UnsupportedOperationException("an order is chosen, not typed");
            }
        });
        order.valueProperty().bindBidirectional(model.orderProperty());
        order.setId("shelf-order");
        order.getStyleClass().add("quiet");
        order.setMinWidth(90);
        order.setPrefWidth(150);
        order.setAccessibleText(messages.of("shelf.order.sentence"));
        return order;
    }

    private static MenuButton add(WindowContext context) {
        Editors editors = context.editors();
        Menu log = new Menu(context.messages().of("shelf.add.temperatures"));
        MenuItem place = new MenuItem(context.messages().of("shelf.add.place"));
        place.setOnAction(event -> editors.addPlace());
        MenuItem batch = new MenuItem(context.messages().of("shelf.add.batch"));
        batch.setOnAction(event -> editors.addBatch());
        MenuButton add = new MenuButton(context.messages().of("shelf.add.menu"), null, batch, place, log);
        add.setOnShowing(event -> {
            log.getItems().clear();
            for (Place each : context.workspace().getCellar().places()) {
                MenuItem into = new MenuItem(each.name());
                into.setMnemonicParsing(false);
                into.setOnAction(chosen -> editors.importInto(each));
                log.getItems().add(into);
            }
            log.setDisable(log.getItems().isEmpty());
        });
        add.setId("shelf-add");
        add.setMinWidth(USE_PREF_SIZE);
        add.getStyleClass().add("quiet");
        return add;
    }
}
