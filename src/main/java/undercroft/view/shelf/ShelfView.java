package undercroft.view.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.TimeViewModel;
import undercroft.app.shelf.CompareViewModel;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfSeason;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.outlook.CellarOutlook;
import undercroft.picture.SeasonPicture;
import undercroft.picture.SeasonRow;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.Scrolls;
import undercroft.view.kit.Widths;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** The shelf as one picture with its season: a heading for each place, under it the crates, each the head of its row in time. */
final class ShelfView extends VBox {
    private static final double AXIS = 30;
    private static final double HEAD = 320;
    private static final double NARROW_HEAD = 220;
    private static final double NARROW = 760;
    private static final double LEAST_SEASON = 200;
    private static final double ZOOM = 1.2;

    private final ShelfViewModel model;
    private final WindowContext context;
    private final TimeViewModel time;
    private final ShelfHeaderView header;
    private final CrateDrags drags;
    private final ShelfBoard board = new ShelfBoard();
    private final ScrollPane scroll = new ScrollPane(board);
    private final SeasonCanvas season =
            new SeasonCanvas(new SeasonPicture.Sizes(0, AXIS, ShelfBoard.LANE, ShelfBoard.ROW));
    private final Label sum = new Label();
    private final StackPane card = new Card();
    private HBox zooms;
    private Button all;
    /** Above the names of the crates, and as wide. */
    private final HBox head = new HBox(2);

    private double lastX;

    ShelfView(ShelfViewModel model, WindowContext context, TimeViewModel time, CompareViewModel compare) {
        this.model = model;
        this.context = context;
        this.time = time;
        drags = new CrateDrags(model, context, board);
        header = new ShelfHeaderView(model, context);
        getStyleClass().add("shelf");
        setId("shelf");
        setMinWidth(0);
        board.getStyleClass().add("planks");
        board.setId("planks");
        board.setFocusTraversable(true);
        board.setAccessibleRole(AccessibleRole.LIST_VIEW);
        board.setAccessibleText(context.messages().of("shelf.board.sentence"));
        board.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        board.setOnMousePressed(this::press);
        board.setOnMouseDragged(this::drag);
        board.addEventFilter(ScrollEvent.SCROLL, this::wheel);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        card.setAlignment(Pos.TOP_LEFT);
        card.getStyleClass().addAll("card", "shelf-card");
        card.getChildren().addAll(season, new VBox(axisHead(), scroll));
        VBox.setVgrow(card, Priority.ALWAYS);
        getChildren().addAll(header, new MarksBar(model, context, drags::carry, compare), card);
        scroll.vvalueProperty().addListener((property, before, after) -> card.requestLayout());
        scroll.viewportBoundsProperty().addListener((property, before, after) -> card.requestLayout());
        Widths.follow(this, width -> arrange());
        model.planProperty().addListener((property, before, after) -> fill());
        model.chosenProperty().addListener((property, before, after) -> markChosen());
        model.markedProperty().addListener((property, before, after) -> markChosen());
        context.dark().addListener((property, before, after) -> fill());
        fill();
    }

    /** Draws the season whenever it is laid out, once a pulse. */
    private final class Card extends StackPane {
        @Override
        protected void layoutChildren() {
            super.layoutChildren();
            double head = board.headWidth();
            double view = scroll.getViewportBounds().getHeight();
            double top = scroll.getVvalue() * Math.max(0, board.getHeight() - view);
            season.relocate(snappedLeftInset() + head, snappedTopInset());
            if (all.isVisible() != season.isMoved()) {
                Platform.runLater(() -> all.setVisible(season.isMoved()));
            }
            season.draw(scroll.getViewportBounds().getWidth() - head, AXIS + view, top);
        }
    }

    private Region axisHead() {
        all = zoom("season-all", "plots.zoom.all", "plots.zoom.all.sentence", () -> season.showUsual());
        sum.getStyleClass().add("faint");
        all.managedProperty().bind(all.visibleProperty());
        all.setVisible(false);
        zooms = new HBox(
                all,
                zoom(
                        "season-wider",
                        "plots.zoom.wider",
                        "plots.zoom.wider.sentence",
                        () -> season.zoom(middle(), 1 / ZOOM)),
                zoom(
                        "season-closer",
                        "plots.zoom.closer",
                        "plots.zoom.closer.sentence",
                        () -> season.zoom(middle(), ZOOM)),
                seasonMenu());
        zooms.getStyleClass().add("zoom-buttons");
        zooms.managedProperty().bind(zooms.visibleProperty());
        head.getChildren().setAll(sum, space(), zooms);
        zooms.setAlignment(Pos.CENTER_LEFT);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("season-head");
        head.setMinHeight(AXIS);
        head.setPrefHeight(AXIS);
        head.setMaxWidth(USE_PREF_SIZE);
        board.layoutBoundsProperty().addListener((property, before, after) -> fitHead());
        head.setPickOnBounds(false);
        return head;
    }

    private MenuButton seasonMenu() {
        Messages messages = context.messages();
        MenuButton menu = new MenuButton(messages.of("plots.menu.button"));
        menu.setId("season-menu");
        menu.getStyleClass().addAll("quiet", "small");
        menu.setMinWidth(USE_PREF_SIZE);
        menu.setAccessibleText(messages.of("season.menu.sentence"));
        menu.setTooltip(new Tooltip(menu.getAccessibleText()));
        menu.getItems()
                .setAll(PlotMenu.of(
                        this,
                        context,
                        messages,
                        () -> season.whole()
                                .map(picture -> new PlotMenu.Shown(
                                        picture,
                                        messages.of("season.menu.title"),
                                        season.getAccessibleText(),
                                        Optional.empty()))));
        return menu;
    }

    private static Region space() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        return space;
    }

    private Button zoom(String id, String key, String sentenceKey, Runnable act) {
        Button button = new Button(context.messages().of(key));
        button.setId(id);
        button.getStyleClass().addAll("quiet", "small");
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(context.messages().of(sentenceKey));
        button.setFocusTraversable(false);
        button.setOnAction(event -> {
            act.run();
            card.requestLayout();
        });
        return button;
    }

    private void fitHead() {
        head.setPrefWidth(Math.max(0, board.headWidth()));
    }

    private double middle() {
        return season.getWidth() / 2;
    }

    private void arrange() {
        double width = getWidth();
        boolean seasonFits = width >= NARROW_HEAD + LEAST_SEASON + 40 && width > 420;
        board.setHeadWidth(!seasonFits ? Double.MAX_VALUE : width < NARROW ? NARROW_HEAD : HEAD);
        fitHead();
        zooms.setVisible(seasonFits);
        season.setVisible(seasonFits);
        header.setCompact(width < NARROW);
        card.requestLayout();
    }

    /** Puts the keyboard on the crates. */
    void takeFocus() {
        board.requestFocus();
    }

    /** Puts the keyboard into the search. */
    void find() {
        header.takeFocus();
    }

    private void fill() {
        ShelfPlan plan = model.planProperty().get();
        CellarOutlook outlook = model.outlook();
        board.clear();
        if (plan == null || outlook == null) {
            return;
        }
        boolean filtered =
                !model.searchProperty().get().isBlank() || model.showProperty().get() != ShelfViewModel.Show.ALL;
        if (plan.crates().isEmpty()) {
            board.note(
                    filtered ? EmptyShelf.noHit(context.messages(), model) : EmptyShelf.of(context), EmptyShelf.HEIGHT);
        }
        ShelfSeason arranged = ShelfSeason.of(
                outlook, plan, context.messages(), context.clock().instant());
        for (ShelfPlan.Plank plank : plan.planks()) {
            board.heading(
                    PlaceHeading.of(
                            plank,
                            context.messages(),
                            SensorSign.of(context, plank.placeId()),
                            new PlaceMenu(context, plank.placeId()).items()),
                    plank.placeId());
            board.crates(views(plank.crates()), arranged::rows, plank.placeId());
        }
        if (!plan.planned().isEmpty()) {
            board.heading(PlaceHeading.plain(context.messages().of("shelf.plank.planned")), "");
            board.crates(views(plan.planned()), crate -> 1, "");
        }
        if (model.showsGoneProperty().get() && !plan.gone().isEmpty()) {
            board.heading(PlaceHeading.plain(context.messages().of("shelf.plank.gone")), "");
            board.crates(views(plan.gone()), crate -> 1, "");
        }
        season.show(
                arranged.season(),
                ShelfWords.of(outlook, context.messages()),
                Looks.palette(context.dark().get()));
        sum.setText(sum(plan));
        markChosen();
        arrange();
    }

    private String sum(ShelfPlan plan) {
        long batches = plan.planks().stream()
                .flatMap(plank -> plank.crates().stream())
                .map(ShelfPlan.Crate::batchId)
                .distinct()
                .count();
        int bottles = plan.planks().stream()
                .flatMap(plank -> plank.crates().stream())
                .mapToInt(ShelfPlan.Crate::left)
                .sum();
        return context.messages()
                .of("shelf.sum.text", bottles, context.messages().of("shelf.sum.batches", batches));
    }

    private List<CrateView> views(List<ShelfPlan.Crate> crates) {
        List<CrateView> views = new ArrayList<>();
        for (ShelfPlan.Crate crate : crates) {
            CrateView view =
                    new CrateView(crate, context.messages(), context.dark().get());
            view.setOnMousePressed(event -> pressCrate(event, crate));
            drags.from(view);
            views.add(view);
        }
        return views;
    }

    private void pressCrate(MouseEvent event, ShelfPlan.Crate crate) {
        board.requestFocus();
        if (event.isShortcutDown()) {
            model.mark(crate);
        } else if (event.isShiftDown()) {
            model.markUpTo(crate);
        } else {
            model.choose(crate);
            if (event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2) {
                model.batchOpenProperty().set(true);
            }
        }
        event.consume();
    }

    private void markChosen() {
        ShelfPlan.Crate chosen = model.chosenProperty().get();
        for (CrateView view : board.crates()) {
            boolean is = chosen != null && view.crate().key().equals(chosen.key());
            view.setChosen(is);
            view.setMarked(model.markedProperty().get().contains(view.crate().key()));
            if (is) {
                Scrolls.intoView(scroll, view);
            }
        }
    }

    private void press(MouseEvent event) {
        board.requestFocus();
        lastX = event.getX();
        season.rowAt(event.getY() + AXIS).ifPresent(row -> {
            crateOf(row).ifPresent(view -> pressCrate(event, view.crate()));
        });
    }

    private Optional<CrateView> crateOf(SeasonRow row) {
        return board.crates().stream()
                .filter(view -> view.crate().batchId().equals(row.batchId()))
                .filter(view -> season.frameOf(row)
                        .filter(frame -> view.getLayoutY() + AXIS <= frame.y()
                                && view.getLayoutY() + view.getHeight() + AXIS >= frame.bottom())
                        .isPresent())
                .findFirst();
    }

    private void drag(MouseEvent event) {
        if (event.getX() > board.headWidth()) {
            season.pan(event.getX() - lastX);
            lastX = event.getX();
            card.requestLayout();
        }
    }

    private void wheel(ScrollEvent event) {
        if (event.isShortcutDown() && event.getDeltaY() != 0 && event.getX() > board.headWidth()) {
            season.zoom(event.getX() - board.headWidth(), event.getDeltaY() > 0 ? ZOOM : 1 / ZOOM);
            card.requestLayout();
            event.consume();
        }
    }

    private void key(KeyEvent event) {
        if (event.getTarget() == board) {
            Shortcut.of(Shortcut.Field.CRATES, event).filter(this::act).ifPresent(pressed -> {
                card.requestLayout();
                event.consume();
            });
        }
    }

    /** Whether there was anything to do. */
    private boolean act(Shortcut pressed) {
        ShelfPlan.Crate chosen = model.chosenProperty().get();
        switch (pressed) {
            case CRATE_BEFORE -> model.move(ShelfViewModel.Step.PREVIOUS);
            case CRATE_AFTER -> model.move(ShelfViewModel.Step.NEXT);
            case PLACE_BEFORE -> model.move(ShelfViewModel.Step.PLANK_UP);
            case PLACE_AFTER -> model.move(ShelfViewModel.Step.PLANK_DOWN);
            case FIRST_CRATE -> model.move(ShelfViewModel.Step.FIRST);
            case LAST_CRATE -> model.move(ShelfViewModel.Step.LAST);
            case DAY_BEFORE -> time.step(-1);
            case DAY_AFTER -> time.step(1);
            case LESS_OF_THE_SEASON -> season.zoom(middle(), ZOOM);
            case MORE_OF_THE_SEASON -> season.zoom(middle(), 1 / ZOOM);
            case OPEN_BATCH -> model.batchOpenProperty().set(chosen != null);
            case MARK -> {
                if (chosen != null) {
                    model.mark(chosen);
                }
            }
            default -> {
                boolean any = !model.markedProperty().get().isEmpty();
                model.unmarkAll();
                return any;
            }
        }
        return true;
    }
}
