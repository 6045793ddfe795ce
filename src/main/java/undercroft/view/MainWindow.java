package undercroft.view;

import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.binding.Bindings;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import undercroft.app.BatchViewModel;
import undercroft.app.Pages;
import undercroft.app.Pages.Page;
import undercroft.app.ShelfViewModel;
import undercroft.app.TimeViewModel;
import undercroft.app.ToDoViewModel;
import undercroft.app.servings.ServingsViewModel;
import undercroft.quantity.InvalidInput;
import undercroft.view.bottling.BottlingView;
import undercroft.view.kit.Looks;
import undercroft.view.kit.Notices;
import undercroft.view.kit.WindowContext;
import undercroft.view.servings.ServingsView;
import undercroft.view.shelf.BatchView;
import undercroft.view.shelf.ShelfView;
import undercroft.view.shelf.ToDoActions;
import undercroft.view.shelf.ToDoStrip;
import undercroft.view.spells.SpellsView;
import undercroft.wording.Texts;

/** The window: bar and strip above, shelf on the left, batch on the right. */
public final class MainWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double SHELF_SHARE = 0.36;
    private static final Duration CLOCK_STEP = Duration.minutes(5);

    private final WindowContext parts;
    private final Scene scene;
    private final Timeline clock;
    private final ShelfView shelfView;

    public MainWindow(WindowContext parts) {
        this.parts = parts;
        ShelfViewModel shelf = new ShelfViewModel(parts.forecasts().outlookProperty());
        BatchViewModel batch =
                new BatchViewModel(parts.workspace(), parts.forecasts().outlookProperty(), shelf.chosenProperty());
        TimeViewModel time =
                new TimeViewModel(parts.workspace(), parts.forecasts().asOfProperty(), parts.clock());
        ToDoViewModel toDo =
                new ToDoViewModel(parts.workspace(), parts.forecasts().outlookProperty());
        ServingsViewModel servings =
                new ServingsViewModel(parts.workspace(), parts.forecasts().outlookProperty());

        shelfView = new ShelfView(shelf, parts);
        Pages pages = new Pages();
        BottlingView bottling = new BottlingView(parts, batchId -> {
            pages.show(Page.SHELF);
            shelf.chooseBatch(batchId);
        });
        BatchView batchView = new BatchView(batch, parts, batchId -> {
            bottling.open(batchId);
            pages.show(Page.BOTTLING_DAY);
        });
        HBox.setHgrow(batchView, Priority.ALWAYS);
        HBox middle = new HBox(shelfView, batchView);
        middle.getStyleClass().add("middle");
        PageDeck deck = new PageDeck(pages)
                .with(Page.SHELF, () -> middle)
                .with(Page.BOTTLING_DAY, () -> bottling)
                .with(
                        Page.WARM_SPELLS,
                        () -> new SpellsView(parts, (batchId, then) -> {
                            time.goTo(then);
                            pages.show(Page.SHELF);
                            shelf.chooseBatch(batchId);
                        }))
                .with(Page.SERVINGS, () -> new ServingsView(servings, parts));
        ToDoActions actions = new ToDoActions(
                toDo,
                parts,
                batchId -> {
                    pages.show(Page.SHELF);
                    shelf.chooseBatch(batchId);
                },
                servingId -> {
                    pages.show(Page.SERVINGS);
                    servings.choose(servingId);
                });
        VBox top = new VBox(
                new TopBar(parts, time, new PageLinks(pages, deck.pages())),
                new FaultBar(parts.faults()),
                new ToDoStrip(toDo, parts, actions));
        top.getStyleClass().add("top");
        BorderPane root = new BorderPane(deck, top, null, null, null);
        root.getStyleClass().add("window");
        shelfView.prefWidthProperty().bind(root.widthProperty().multiply(SHELF_SHARE));
        shelfView.setMinWidth(330);
        shelfView.setMaxWidth(720);
        batchView.setPrefWidth(600);
        scene = new Scene(root, WIDTH, HEIGHT);
        Looks.dress(scene, parts.dark().get());
        parts.dark().addListener((property, before, after) -> Looks.dress(scene, after));
        parts.workspace().saveFaultProperty().addListener((property, before, after) -> showSaveFault(after));
        addKeys();
        clock = new Timeline(new KeyFrame(CLOCK_STEP, event -> {
            time.refresh();
            parts.forecasts().refresh();
        }));
        clock.setCycleCount(Animation.INDEFINITE);
    }

    public Scene scene() {
        return scene;
    }

    /** Puts the window on the stage; the clock it follows runs while the stage is shown. */
    public void show(Stage stage) {
        stage.titleProperty()
                .bind(Bindings.createStringBinding(
                        () -> Texts.of(
                                "app.title", parts.workspace().getCellar().name(), Texts.of("app.name")),
                        parts.workspace().stateProperty()));
        stage.setScene(scene);
        Notices.over(stage, parts);
        stage.setMinWidth(960);
        stage.setMinHeight(640);
        stage.setOnShown(event -> clock.play());
        stage.setOnHidden(event -> clock.stop());
        parts.forecasts().refresh();
        stage.show();
        shelfView.takeFocus();
    }

    private void showSaveFault(InvalidInput fault) {
        if (fault != null) {
            parts.faults()
                    .show(new InvalidInput(
                            "", "fault.save.text", Texts.messages().fault(fault)));
        }
    }

    private void addKeys() {
        key(new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN), () -> parts.workspace()
                .undo());
        key(
                new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                () -> parts.workspace().redo());
        key(new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN), () -> parts.workspace()
                .redo());
    }

    private void key(KeyCombination keys, Runnable act) {
        scene.getAccelerators().put(keys, () -> parts.faults().guard(act));
    }
}
