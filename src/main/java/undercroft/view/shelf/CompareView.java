package undercroft.view.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import undercroft.app.shelf.ComparePage;
import undercroft.app.shelf.CompareViewModel;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** Two or three batches on the same plots, what they have in common and what not beside them. */
final class CompareView extends VBox {
    private static final int MOST = 3;
    private static final double TABLE = 380;
    private static final double LABELS = 110;

    private final CompareViewModel model;
    private final WindowContext context;
    private final Messages messages;
    private final PlotsView plots;
    private final FlowPane choices = new FlowPane(8, 4);
    private final VBox tables = new VBox(12);

    CompareView(CompareViewModel model, WindowContext context, Messages messages, Runnable back) {
        super(8);
        this.model = model;
        this.context = context;
        this.messages = messages;
        getStyleClass().add("compare");
        setId("compare");
        setMinWidth(0);
        plots = new PlotsView(messages, second -> words().dayAndTime(Instant.ofEpochSecond(second)));
        plots.setId("compare-plots");
        PlotMenu.on(
                plots,
                context,
                messages,
                () -> String.join(", ", model.pageProperty().get().names()));
        Button toShelf = new Button(messages.of("batch.back.button"));
        toShelf.setId("compare-back");
        toShelf.getStyleClass().add("quiet");
        toShelf.setMinWidth(USE_PREF_SIZE);
        toShelf.setAccessibleText(messages.of("batch.back.sentence"));
        toShelf.setOnAction(event -> back.run());
        Label title = new Label(messages.of("compare.title"));
        title.getStyleClass().add("batch-title");
        title.setMinWidth(USE_PREF_SIZE);
        choices.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(choices, Priority.ALWAYS);
        HBox bar = new HBox(12, toShelf, title, choices, count());
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("batch-bar");
        ScrollPane scroll = new ScrollPane(tables);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setMinWidth(TABLE);
        scroll.setPrefWidth(TABLE);
        StackPane card = new StackPane(plots);
        card.getStyleClass().addAll("card", "plot-card");
        card.setMinWidth(0);
        HBox.setHgrow(card, Priority.ALWAYS);
        HBox body = new HBox(16, scroll, card);
        VBox.setVgrow(body, Priority.ALWAYS);
        getChildren().addAll(bar, body);
        model.pageProperty().addListener((property, before, after) -> fill());
        context.dark().addListener((property, before, after) -> fill());
        fill();
    }

    private ShelfWords words() {
        return ShelfWords.of(context.forecasts().outlookProperty().get(), messages);
    }

    private Node count() {
        ToggleGroup group = new ToggleGroup();
        ToggleButton capping = toggle(group, "compare-capping", "compare.from-capping", true);
        ToggleButton dates = toggle(group, "compare-dates", "compare.by-date", false);
        HBox count = new HBox(4, capping, dates);
        count.setAlignment(Pos.CENTER_RIGHT);
        count.setMinWidth(Region.USE_PREF_SIZE);
        return count;
    }

    private ToggleButton toggle(ToggleGroup group, String id, String key, boolean fromCapping) {
        ToggleButton button = new ToggleButton(messages.of(key));
        button.setId(id);
        button.setToggleGroup(group);
        button.getStyleClass().add("filter");
        button.setSelected(model.fromCappingProperty().get() == fromCapping);
        button.setOnAction(event -> {
            button.setSelected(true);
            model.fromCappingProperty().set(fromCapping);
        });
        return button;
    }

    private void fill() {
        ComparePage page = model.pageProperty().get();
        if (page == null) {
            return;
        }
        choices.getChildren().clear();
        int places = Math.min(MOST, model.chosenProperty().get().size() + 1);
        for (int i = 0; i < places; i++) {
            choices.getChildren().add(choice(i));
        }
        tables.getChildren()
                .setAll(
                        table(messages.of("compare.today"), page.names(), page.today(), false),
                        table(messages.of("compare.told"), page.names(), page.told(), true));
        plots.setPalette(Looks.palette(context.dark().get()));
        plots.show(page.picture(), false);
    }

    private Node choice(int index) {
        ComboBox<Optional<CompareViewModel.Choice>> box = new ComboBox<>();
        box.setId("compare-" + index);
        List<String> chosen = model.chosenProperty().get();
        List<Optional<CompareViewModel.Choice>> items = new ArrayList<>();
        if (index > 0) {
            items.add(Optional.empty());
        }
        model.choices().stream()
                .filter(each -> !chosen.contains(each.batchId()) || chosen.indexOf(each.batchId()) == index)
                .forEach(each -> items.add(Optional.of(each)));
        box.getItems().setAll(items);
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(Optional<CompareViewModel.Choice> each) {
                return each == null || each.isEmpty()
                        ? messages.of("compare.choose")
                        : each.get().name();
            }

            @Override
            public Optional<CompareViewModel.Choice> fromString(String text) {
                throw new UnsupportedOperationException("a batch is chosen, not typed");
            }
        });
        box.setValue(items.stream()
                .filter(each -> index < chosen.size()
                        && each.filter(one -> one.batchId().equals(chosen.get(index)))
                                .isPresent())
                .findFirst()
                .orElse(Optional.empty()));
        box.setAccessibleText(messages.of("compare.choice.sentence", index + 1));
        box.setPrefWidth(180);
        box.setOnAction(event -> model.choose(index, box.getValue().map(CompareViewModel.Choice::batchId)));
        return box;
    }

    private static Node table(String title, List<String> names, List<ComparePage.Row> rows, boolean marksDifferences) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("compare-table");
        grid.getColumnConstraints().add(new ColumnConstraints(LABELS));
        for (int i = 0; i < names.size(); i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / (names.size() + 1.6));
            grid.getColumnConstraints().add(column);
            grid.add(wrapped(names.get(i), "compare-name"), i + 1, 0);
        }
        int row = 1;
        for (ComparePage.Row each : rows) {
            boolean marked = marksDifferences && each.differs();
            grid.add(wrapped(each.label(), "faint"), 0, row);
            for (int i = 0; i < each.values().size(); i++) {
                grid.add(wrapped(each.values().get(i), marked ? "compare-differs" : "compare-value"), i + 1, row);
            }
            row++;
        }
        Label heading = new Label(title);
        heading.getStyleClass().add("section-title");
        VBox card = new VBox(6, heading, grid);
        card.getStyleClass().addAll("card", "compare-card");
        return card;
    }

    private static Label wrapped(String words, String styleClass) {
        Label label = new Label(words);
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
