package undercroft.view.bottling;

import java.util.EnumMap;
import java.util.Map;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import undercroft.app.bottling.BottlingPage;
import undercroft.app.bottling.PlanForm;

/** An open plan: its pages by name on the left, the one that is turned to beside them. */
final class PlanView extends HBox {
    private static final Duration KEEPING = Duration.seconds(1);
    private static final Duration SECOND = Duration.seconds(1);

    private final BottlingContext context;
    private final PlanForm form;
    private final RailView rail;
    private final VBox body = new VBox();
    private final ScrollPane scroll = new ScrollPane(body);
    private final HBox turning = new HBox(8);
    private final Map<BottlingPage, Node> made = new EnumMap<>(BottlingPage.class);
    private final PauseTransition keeping = new PauseTransition(KEEPING);
    private final Timeline ticking;

    PlanView(BottlingContext context, PlanForm form) {
        super(16);
        this.context = context;
        this.form = form;
        getStyleClass().add("draft-pane");
        rail = new RailView(context, form);
        body.getStyleClass().add("screen");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        turning.getStyleClass().add("screen-turning");
        VBox card = new VBox(scroll, turning);
        card.getStyleClass().addAll("form", "bottling-card", "screen-card");
        HBox.setHgrow(card, Priority.ALWAYS);
        getChildren().setAll(rail, card);
        keeping.setOnFinished(event -> context.window().faults().guard(context.model()::keep));
        form.madeProperty().addListener((property, before, after) -> keeping.playFromStart());
        ticking = new Timeline(new KeyFrame(SECOND, event -> second()));
        ticking.setCycleCount(Animation.INDEFINITE);
        sceneProperty().addListener((property, before, after) -> run(after != null));
        turnTo(context.model().screenProperty().get());
    }

    private void run(boolean shown) {
        if (shown) {
            ticking.play();
        } else {
            ticking.stop();
            keeping.stop();
        }
    }

    private void second() {
        rail.second();
        if (made.get(BottlingPage.THE_DAY) instanceof ChecklistView day) {
            day.second();
        }
    }

    /** Paints anew in other colours. */
    void repaint() {
        made.remove(BottlingPage.CARBONATION);
        turnTo(context.model().screenProperty().get());
    }

    void turnTo(BottlingPage screen) {
        rail.write();
        if (screen == BottlingPage.CAP) {
            made.remove(BottlingPage.CAP);
        }
        body.getChildren()
                .setAll(
                        Labels.of(screen.title(context.messages()), "batch-title"),
                        made.computeIfAbsent(screen, this::make));
        scroll.setVvalue(0);
        turning.getChildren().clear();
        screen.previous().ifPresent(other -> turning.getChildren().add(turn("bottling.turn.back", "back", other)));
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        turning.getChildren().add(gap);
        screen.next().ifPresent(other -> {
            Button next = turn("bottling.turn.on", "on", other);
            next.getStyleClass().add("accent");
            turning.getChildren().add(next);
        });
    }

    private Button turn(String key, String id, BottlingPage other) {
        Button button = new Button(context.messages().of(key, other.title(context.messages())));
        button.setId("turn-" + id);
        button.setOnAction(
                event -> context.window().faults().guard(() -> context.model().show(other)));
        return button;
    }

    private Node make(BottlingPage screen) {
        return switch (screen) {
            case BEER -> BeerView.of(context, form);
            case BOTTLES -> BottlesView.of(context, form);
            case CARBONATION -> CarbonationView.of(context, form);
            case SUGAR -> SugarView.of(context, form);
            case GO_OR_WAIT -> VerdictView.of(context, form);
            case CLEAN -> CleaningView.of(context, form);
            case THE_DAY -> new ChecklistView(context, form);
            case CAP -> CappingView.of(context);
        };
    }
}
