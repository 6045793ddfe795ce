package undercroft.view.shelf;

import java.util.List;
import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import undercroft.app.shelf.CompareViewModel;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.cellar.Place;
import undercroft.view.kit.WindowContext;

/** What can be done with all crates that are marked; there while any is. */
final class MarksBar extends HBox {
    private final ShelfViewModel model;
    private final WindowContext context;
    private final BiConsumer<List<ShelfPlan.Crate>, String> move;
    private final CompareViewModel compare;

    /** {@code move} carries crates to the place with an id. */
    MarksBar(
            ShelfViewModel model,
            WindowContext context,
            BiConsumer<List<ShelfPlan.Crate>, String> move,
            CompareViewModel compare) {
        super(8);
        this.model = model;
        this.context = context;
        this.move = move;
        this.compare = compare;
        getStyleClass().add("marks-bar");
        setId("marks-bar");
        setAlignment(Pos.CENTER_LEFT);
        managedProperty().bind(visibleProperty());
        model.markedProperty().addListener((property, before, after) -> fill());
        fill();
    }

    private void fill() {
        List<ShelfPlan.Crate> crates = model.markedCrates();
        setVisible(!crates.isEmpty());
        int bottles = crates.stream().mapToInt(ShelfPlan.Crate::left).sum();
        Label sum = new Label(context.messages()
                .of("shelf.marks.text", crates.size(), context.messages().of("shelf.sum.bottles", bottles)));
        sum.getStyleClass().add("marks-sum");
        MenuButton to = new MenuButton(context.messages().of("shelf.marks.move"));
        to.setId("marks-move");
        to.getStyleClass().add("quiet");
        for (Place place : context.workspace().getCellar().places()) {
            MenuItem item = new MenuItem(place.name());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> move.accept(crates, place.id()));
            to.getItems().add(item);
        }
        Button side = new Button(context.messages().of("shelf.marks.compare"));
        side.setId("marks-compare");
        side.getStyleClass().add("quiet");
        List<String> batches =
                crates.stream().map(ShelfPlan.Crate::batchId).distinct().toList();
        side.setDisable(batches.size() > 3
                || crates.stream().anyMatch(crate -> crate.placeId().isEmpty()));
        side.setOnAction(event -> compare.compare(batches));
        Button clear = new Button(context.messages().of("shelf.marks.clear"));
        clear.setId("marks-clear");
        clear.getStyleClass().add("quiet");
        clear.setOnAction(event -> model.unmarkAll());
        getChildren().setAll(sum, to, side, clear);
    }
}
