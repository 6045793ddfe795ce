package undercroft.view.shelf;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.cellar.Place;
import undercroft.view.kit.Editors;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/** What is looked for on the shelf, which crates are shown, what comes first, and what can be added. */
final class ShelfHeaderView extends HBox {
    private static final double FIND_WIDTH = 210;
    private static final double SHORT_FIND = 120;

    private final Messages messages;
    private final ShelfViewModel model;
    private final TextField find = new TextField();
    private final HBox filters = new HBox();
    private final ChoiceBox<ShelfPlan.Order> order;
    private final Region space = new Region();
    private final Map<ShelfViewModel.Show, ToggleButton> buttons = new EnumMap<>(ShelfViewModel.Show.class);

    ShelfHeaderView(ShelfViewModel model, WindowContext context) {
        this.model = model;
        getStyleClass().add("shelf-header");
        setAlignment(Pos.CENTER_LEFT);
        setMinWidth(0);
        find.setId("shelf-find");
        find.setPromptText(context.messages().of("shelf.find.prompt"));
        find.setAccessibleText(context.messages().of("shelf.find.sentence"));
        find.textProperty().bindBidirectional(model.searchProperty());
        find.setOnKeyPressed(event -> {
            if (Shortcut.LEAVE.matches(event) && !find.getText().isEmpty()) {
                find.clear();
                event.consume();
            }
        });
        filters.getStyleClass().add("shelf-filters");
        filters.setAlignment(Pos.CENTER_LEFT);
        ToggleGroup group = new ToggleGroup();
        for (ShelfViewModel.Show show : ShelfViewModel.Show.values()) {
            buttons.put(show, filter(group, show));
        }
        filters.getChildren().addAll(buttons.values());
        this.messages = context.messages();
        order = order(model, messages);
        HBox.setHgrow(space, Priority.ALWAYS);
        getChildren().addAll(find, filters, space, order, add(context));
        model.planProperty().addListener((property, before, after) -> name());
        model.showProperty().addListener((property, before, after) -> name());
        name();
        setCompact(false);
    }

    /** In a narrow column only the search and what can be added are there. */
    void setCompact(boolean compact) {
        find.setPrefWidth(compact ? SHORT_FIND : FIND_WIDTH);
        find.setMinWidth(SHORT_FIND);
        HBox.setHgrow(find, compact ? Priority.ALWAYS : Priority.NEVER);
        for (Region each : new Region[] {filters, order, space}) {
            each.setVisible(!compact);
            each.setManaged(!compact);
        }
    }

    void takeFocus() {
        find.requestFocus();
        find.selectAll();
    }

    private ToggleButton filter(ToggleGroup group, ShelfViewModel.Show show) {
        ToggleButton button = new ToggleButton();
        button.setId("show-" + show.name().toLowerCase(Locale.ROOT));
        button.setToggleGroup(group);
        button.setMinWidth(USE_PREF_SIZE);
        button.getStyleClass().add("filter");
        button.setOnAction(event -> {
            button.setSelected(true);
            model.showProperty().set(show);
        });
        return button;
    }

    private void name() {
        buttons.forEach((show, button) -> {
            String name = messages.nameOf(show);
            long count = model.count(show);
            button.setText(
                    show == ShelfViewModel.Show.ALL
                            ? messages.capital(name)
                            : messages.of("shelf.filter.counted", messages.capital(name), count));
            button.setDisable(count == 0 && show != model.showProperty().get() && show != ShelfViewModel.Show.ALL);
            button.setSelected(show == model.showProperty().get());
        });
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
        order.setPrefWidth(172);
        order.setAccessibleText(messages.of("shelf.order.sentence"));
        Tooltip whole = new Tooltip();
        whole.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> order.getConverter().toString(order.getValue()), order.valueProperty()));
        order.setTooltip(whole);
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
