package undercroft.view;

import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import undercroft.app.Faults;
import undercroft.app.LastView;
import undercroft.app.Pages;
import undercroft.app.Pages.Page;
import undercroft.app.TimeViewModel;
import undercroft.app.evidence.EvidenceViewModel;
import undercroft.app.servings.ServingsViewModel;
import undercroft.app.shelf.BatchViewModel;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.quantity.InvalidInput;
import undercroft.view.bottling.BottlingView;
import undercroft.view.evidence.EvidencePane;
import undercroft.view.help.HelpWindow;
import undercroft.view.kit.Looks;
import undercroft.view.kit.Notices;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.keys.Shortcut;
import undercroft.view.servings.ServingsView;
import undercroft.view.shelf.ShelfPage;
import undercroft.view.shelf.ToDoActions;
import undercroft.view.shelf.ToDoView;
import undercroft.view.spells.SpellsView;

/** The window: bar and strip above, shelf on the left, batch on the right. */
public final class MainWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private final WindowContext context;
    private final Scene scene;
    private final ShelfPage shelfPage;
    private final ShelfViewModel shelf;
    private final Pages pages = new Pages();
    private final HelpWindow help;
    private boolean wasShown;

    public MainWindow(WindowContext context) {
        this.context = context;
        help = new HelpWindow(
                context.messages(),
                () -> context.workspace().getCellar().settings().units(),
                context.workspace().getCellar().zone(),
                context.tasks(),
                context.dark());
        shelf = new ShelfViewModel(context.messages(), context.forecasts().soFarProperty());
        BatchViewModel batch = new BatchViewModel(
                context.messages(), context.workspace(), context.forecasts().outlookProperty(), shelf.chosenProperty());
        TimeViewModel time = new TimeViewModel(
                context.messages(), context.workspace(), context.forecasts().asOfProperty(), context.clock());
        ToDoViewModel toDo = new ToDoViewModel(
                context.messages(), context.workspace(), context.forecasts().outlookProperty());
        ServingsViewModel servings = new ServingsViewModel(
                context.messages(), context.workspace(), context.forecasts().outlookProperty());

        BottlingView bottling = new BottlingView(context, batchId -> {
            pages.show(Page.SHELF);
            shelf.openBatch(batchId);
        });
        ToDoActions actions = new ToDoActions(
                toDo,
                context,
                batchId -> {
                    pages.show(Page.SHELF);
                    shelf.openBatch(batchId);
                },
                servingId -> {
                    pages.show(Page.SERVINGS);
                    servings.choose(servingId);
                });
        EvidenceViewModel evidence = new EvidenceViewModel(context.forecasts(), context.messages());
        shelfPage = ShelfPage.of(
                shelf,
                batch,
                toDo,
                actions,
                context,
                time,
                batchId -> {
                    bottling.open(batchId);
                    pages.show(Page.BOTTLING_DAY);
                },
                evidence,
                () -> new EvidencePane(evidence, context, context.messages()));
        PagesView deck = new PagesView(pages)
                .with(Page.SHELF, () -> shelfPage)
                .with(Page.BOTTLING_DAY, () -> bottling)
                .with(
                        Page.WARM_SPELLS,
                        () -> new SpellsView(context, (batchId, then) -> {
                            time.goTo(then);
                            pages.show(Page.SHELF);
                            shelf.openBatch(batchId);
                        }))
                .with(Page.SERVINGS, () -> new ServingsView(servings, context));
        ToDoView strip = new ToDoView(toDo, context, actions);
        strip.visibleProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> pages.shownProperty().get() != Page.SHELF
                                || !shelf.batchOpenProperty().get(),
                        pages.shownProperty(),
                        shelf.batchOpenProperty()));
        strip.managedProperty().bind(strip.visibleProperty());
        VBox top = new VBox(
                new TopBar(context, time, new PageBar(context.messages(), pages, deck.pages()), help),
                new StandingBar(context),
                new FaultBar(context.messages(), context.faults()),
                strip);
        top.getStyleClass().add("top");
        // Every page shows a pressure, a dose or a limit, so what holds for all of them stands once, at the foot of the
        // window.
        Label estimate = new Label(context.messages().of("caution.estimate"));
        estimate.setId("estimate");
        estimate.getStyleClass().addAll("faint", "estimate");
        BorderPane root = new BorderPane(deck, top, null, estimate, null);
        NewsView news = new NewsView(context);
        // On the line of the foot, so that it covers nothing that is read on the page.
        StackPane.setAlignment(news, Pos.BOTTOM_RIGHT);
        StackPane.setMargin(news, new Insets(0, 20, 1, 20));
        StackPane window = new StackPane(root, news);
        window.getStyleClass().add("window");
        scene = new Scene(window);
        Looks.dress(scene, context.dark().get());
        context.dark().addListener((property, before, after) -> Looks.dress(scene, after));
        context.workspace().saveFaultProperty().addListener((property, before, after) -> showSaveFault(after));
        Notices.follow(context);
        addKeys();
        context.now().addListener((property, before, after) -> time.refresh());
    }

    public Scene scene() {
        return scene;
    }

    /** What is looked at now, to begin with it the next time. */
    public LastView lastView() {
        ShelfPlan.Crate chosen = shelf.chosenProperty().get();
        return new LastView(pages.shownProperty().get(), chosen == null ? "" : chosen.batchId());
    }

    /** Turns to a page and a batch; one that is not there any more is let be. */
    public void turnTo(LastView view) {
        shelf.chooseBatch(view.batchId());
        pages.show(view.page());
    }

    /** Puts the window on the stage, which may have shown another one in between. */
    public void show(Stage stage) {
        stage.titleProperty()
                .bind(Bindings.createStringBinding(
                        () -> context.messages()
                                .of(
                                        "app.title",
                                        context.workspace().getCellar().name(),
                                        context.messages().of("app.name")),
                        context.workspace().stateProperty()));
        // The window's size belongs to the stage: a scene with a size of its own would be cut off by a smaller one.
        if (Double.isNaN(stage.getWidth())) {
            stage.setWidth(WIDTH);
            stage.setHeight(HEIGHT);
        }
        stage.setScene(scene);
        if (!wasShown) {
            wasShown = true;
            context.forecasts().refresh();
        }
        stage.show();
        shelfPage.takeFocus();
    }

    private void showSaveFault(InvalidInput fault) {
        if (fault != null) {
            context.faults()
                    .show(
                            new InvalidInput(
                                    "", "fault.save.text", context.messages().fault(fault)),
                            new Faults.Offer(
                                    context.messages().of("fault.save.elsewhere"), context.chooser()::saveElsewhere));
        }
    }

    private void addKeys() {
        key(Shortcut.UNDO, () -> context.workspace().undo());
        key(Shortcut.REDO, () -> context.workspace().redo());
        help.listenIn(scene);
    }

    private void key(Shortcut shortcut, Runnable act) {
        shortcut.keys()
                .forEach(keys ->
                        scene.getAccelerators().put(keys, () -> context.faults().guard(act)));
    }
}
