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
import undercroft.app.bottling.DraftForm;
import undercroft.app.bottling.Screen;
import undercroft.wording.Texts;

/** An open draft: its pages by name on the left, the one that is turned to beside them. */
final class DraftPane extends HBox {
    private static final Duration KEEPING = Duration.seconds(1);
    private static final Duration SECOND = Duration.seconds(1);

    private final BottlingContext bench;
    private final DraftForm form;
    private final RailView rail;
    private final VBox body = new VBox();
    private final ScrollPane scroll = new ScrollPane(body);
    private final HBox turning = new HBox(8);
    private final Map<Screen, Node> made = new EnumMap<>(Screen.class);
    private final PauseTransition keeping = new PauseTransition(KEEPING);
    private final Timeline ticking;

    DraftPane(BottlingContext bench, DraftForm form) {
        super(16);
        this.bench = bench;
        this.form = form;
        getStyleClass().add("draft-pane");
        rail = new RailView(bench, form);
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
        keeping.setOnFinished(event -> bench.parts().faults().guard(bench.model()::keep));
        form.madeProperty().addListener((property, before, after) -> keeping.playFromStart());
        ticking = new Timeline(new KeyFrame(SECOND, event -> second()));
        ticking.setCycleCount(Animation.INDEFINITE);
        sceneProperty().addListener((property, before, after) -> run(after != null));
        turnTo(bench.model().screenProperty().get());
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
        if (made.get(Screen.THE_DAY) instanceof DayScreen day) {
            day.second();
        }
    }

    /** Paints anew in other colours. */
    void repaint() {
        made.remove(Screen.CARBONATION);
        turnTo(bench.model().screenProperty().get());
    }

    void turnTo(Screen screen) {
        rail.write();
        if (screen == Screen.CAP) {
            made.remove(Screen.CAP);
        }
        body.getChildren().setAll(Words.of(screen.title(), "batch-title"), made.computeIfAbsent(screen, this::make));
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

    private Button turn(String key, String id, Screen other) {
        Button button = new Button(Texts.of(key, other.title()));
        button.setId("turn-" + id);
        button.setOnAction(
                event -> bench.parts().faults().guard(() -> bench.model().show(other)));
        return button;
    }

    private Node make(Screen screen) {
        return switch (screen) {
            case BEER -> BeerScreen.of(bench, form);
            case BOTTLES -> BottlesScreen.of(bench, form);
            case CARBONATION -> CarbonationScreen.of(bench, form);
            case SUGAR -> SugarScreen.of(bench, form);
            case GO_OR_WAIT -> VerdictScreen.of(bench, form);
            case CLEAN -> CleanScreen.of(bench, form);
            case THE_DAY -> new DayScreen(bench, form);
            case CAP -> CapScreen.of(bench);
        };
    }
}
