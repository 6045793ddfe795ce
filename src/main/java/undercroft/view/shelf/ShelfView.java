package undercroft.view.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Side;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.cellar.Place;
import undercroft.view.kit.Scrolls;
import undercroft.view.kit.WindowContext;

/** The drawn shelf: a plank for each place, one focus for all crates, the arrows move the choice. */
final class ShelfView extends VBox {
    private final ShelfViewModel model;
    private final WindowContext context;
    private final VBox planks = new VBox();
    private final ScrollPane scroll = new ScrollPane(planks);
    private final List<CrateView> crates = new ArrayList<>();

    ShelfView(ShelfViewModel model, WindowContext context) {
        this.model = model;
        this.context = context;
        getStyleClass().add("shelf");
        setId("shelf");
        planks.getStyleClass().add("planks");
        planks.setId("planks");
        planks.setFocusTraversable(true);
        planks.setAccessibleRole(AccessibleRole.LIST_VIEW);
        planks.setAccessibleText(context.messages().of("shelf.title"));
        planks.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        getChildren().addAll(new ShelfHeaderView(model, context), scroll);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        model.planProperty().addListener((property, before, after) -> draw());
        model.showsGoneProperty().addListener((property, before, after) -> draw());
        model.chosenProperty().addListener((property, before, after) -> markChosen());
        context.dark().addListener((property, before, after) -> draw());
        draw();
    }

    /** Puts the keyboard on the crates. */
    void takeFocus() {
        planks.requestFocus();
    }

    private void draw() {
        ShelfPlan plan = model.planProperty().get();
        planks.getChildren().clear();
        crates.clear();
        if (plan == null) {
            return;
        }
        if (plan.crates().isEmpty()) {
            planks.getChildren().add(emptyNote());
        }
        for (ShelfPlan.Plank plank : plan.planks()) {
            String emptyText = context.messages().of("shelf.plank.empty");
            planks.getChildren()
                    .add(new PlankView(placeTitle(plank), plank.climate(), emptyText, crates(plank.crates())));
        }
        if (!plan.planned().isEmpty()) {
            planks.getChildren().add(plank("shelf.plank.planned", plan.planned()));
        }
        if (!plan.gone().isEmpty()) {
            planks.getChildren().add(goneLink(plan.gone().size()));
            if (model.showsGoneProperty().get()) {
                planks.getChildren().add(plank("shelf.plank.gone", plan.gone()));
            }
        }
        if (!plan.crates().isEmpty()) {
            planks.getChildren().add(sum(plan));
        }
        markChosen();
    }

    private Label sum(ShelfPlan plan) {
        long batches = plan.planks().stream()
                .flatMap(plank -> plank.crates().stream())
                .map(ShelfPlan.Crate::batchId)
                .distinct()
                .count();
        int bottles = plan.crates().stream().mapToInt(ShelfPlan.Crate::left).sum();
        Label sum = new Label(context.messages()
                .of("shelf.sum.text", bottles, context.messages().of("shelf.sum.batches", batches)));
        sum.getStyleClass().add("faint");
        return sum;
    }

    private List<CrateView> crates(List<ShelfPlan.Crate> plan) {
        List<CrateView> views = new ArrayList<>();
        for (ShelfPlan.Crate crate : plan) {
            CrateView view =
                    new CrateView(context.messages(), crate, context.dark().get());
            view.setOnMousePressed(event -> {
                planks.requestFocus();
                model.choose(crate);
                if (event.getClickCount() == 2) {
                    model.batchOpenProperty().set(true);
                }
            });
            views.add(view);
        }
        crates.addAll(views);
        return views;
    }

    private PlankView plank(String titleKey, List<ShelfPlan.Crate> plan) {
        Label title = new Label(context.messages().of(titleKey));
        title.getStyleClass().add("plank-title");
        return new PlankView(title, "", "", crates(plan));
    }

    private Node placeTitle(ShelfPlan.Plank plank) {
        Hyperlink title = new Hyperlink(plank.name());
        title.getStyleClass().add("plank-title");
        title.setId("place-" + plank.placeId());
        title.setAccessibleText(context.messages().of("shelf.plank.sentence", plank.name(), plank.climate()));
        MenuItem edit = new MenuItem(context.messages().of("shelf.plank.edit"));
        edit.setOnAction(event -> context.editors().editPlace(place(plank)));
        MenuItem bring = new MenuItem(context.messages().of("shelf.plank.import"));
        bring.setOnAction(event -> context.editors().importInto(place(plank)));
        MenuItem dial = new MenuItem(context.messages().of("shelf.plank.dial"));
        dial.setOnAction(event -> context.editors().readDial(place(plank)));
        ContextMenu menu = new ContextMenu(edit, bring, dial);
        place(plank).followed().ifPresent(log -> {
            MenuItem unfollow = new MenuItem(context.messages().of("form.place.unfollow", log.path()));
            unfollow.setOnAction(event -> context.faults()
                    .guard(() -> context.workspace()
                            .change(
                                    context.messages().of("undo.place.followed", plank.name()),
                                    cellar -> cellar.withPlace(
                                            cellar.place(plank.placeId()).withFollowed(Optional.empty())))));
            menu.getItems().add(unfollow);
        });
        title.setOnAction(event -> menu.show(title, Side.BOTTOM, 0, 2));
        title.setContextMenu(menu);
        return title;
    }

    private Place place(ShelfPlan.Plank plank) {
        return context.workspace().getCellar().place(plank.placeId());
    }

    private Node goneLink(int count) {
        boolean shown = model.showsGoneProperty().get();
        Hyperlink link = new Hyperlink(
                shown
                        ? context.messages().of("shelf.gone.hide")
                        : context.messages().of("shelf.gone.show", count));
        link.setId("show-gone");
        link.setOnAction(event -> model.showsGoneProperty().set(!shown));
        return link;
    }

    private Node emptyNote() {
        Label title = new Label(context.messages().of("shelf.empty.title"));
        title.getStyleClass().add("empty-title");
        Label text = new Label(context.messages().of("shelf.empty.text"));
        text.getStyleClass().add("empty-text");
        text.setWrapText(true);
        Button place = new Button(context.messages().of("shelf.empty.add-place"));
        place.setOnAction(event -> context.editors().addPlace());
        Button batch = new Button(context.messages().of("shelf.empty.add-batch"));
        batch.setOnAction(event -> context.editors().addBatch());
        boolean hasPlace = !context.workspace().getCellar().places().isEmpty();
        (hasPlace ? batch : place).getStyleClass().add("accent");
        batch.setDisable(!hasPlace);
        HBox buttons = new HBox(8, place, batch);
        VBox note = new VBox(8, title, text, buttons);
        note.getStyleClass().add("empty-note");
        note.setId("empty-shelf");
        return note;
    }

    private void markChosen() {
        ShelfPlan.Crate chosen = model.chosenProperty().get();
        for (CrateView view : crates) {
            boolean is = chosen != null && view.crate().key().equals(chosen.key());
            view.setChosen(is);
            if (is) {
                Scrolls.intoView(scroll, view);
            }
        }
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER && event.getTarget() == planks) {
            model.batchOpenProperty().set(true);
            event.consume();
            return;
        }
        ShelfViewModel.Step step = switch (event.getCode()) {
            case LEFT -> ShelfViewModel.Step.PREVIOUS;
            case RIGHT -> ShelfViewModel.Step.NEXT;
            case UP -> ShelfViewModel.Step.PLANK_UP;
            case DOWN -> ShelfViewModel.Step.PLANK_DOWN;
            case HOME -> ShelfViewModel.Step.FIRST;
            case END -> ShelfViewModel.Step.LAST;
            default -> null;
        };
        if (step != null && event.getTarget() == planks) {
            model.move(step);
            event.consume();
        }
    }
}
