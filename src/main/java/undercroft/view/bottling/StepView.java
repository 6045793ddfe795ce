package undercroft.view.bottling;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DayList;
import undercroft.bottling.Step;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.QuantityFormat;

/** One step of the day: a wide button that ticks it, and its timer beside. */
final class StepView extends HBox {
    private static final PseudoClass NEXT = PseudoClass.getPseudoClass("next");
    private static final PseudoClass DONE = PseudoClass.getPseudoClass("done");
    private static final PseudoClass OVER = PseudoClass.getPseudoClass("over");

    private final BottlingContext context;
    private final Step step;
    private final HBox tick = new HBox(14);
    private boolean done;
    private final Button timer = new Button();

    StepView(BottlingContext context, Step step) {
        super(8);
        this.context = context;
        this.step = step;
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("step-row");
        tick.setId("step-" + step.id());
        tick.getStyleClass().add("step");
        tick.setAlignment(Pos.CENTER_LEFT);
        tick.setFocusTraversable(true);
        tick.setAccessibleRole(AccessibleRole.CHECK_BOX);
        tick.getChildren().setAll(words());
        tick.setAccessibleHelp(Stream.of(step.caution(), step.oxygen())
                .flatMap(Optional::stream)
                .map(context.model().words()::of)
                .collect(Collectors.joining(" ")));
        tick.setOnMouseClicked(event -> {
            if (event.getButton() == MouseButton.PRIMARY) {
                tick.requestFocus();
                turn();
            }
        });
        tick.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        HBox.setHgrow(tick, Priority.ALWAYS);
        timer.setId("timer-" + step.id());
        timer.getStyleClass().add("step-timer");
        timer.setMinWidth(Region.USE_PREF_SIZE);
        timer.setOnAction(event -> with(list -> {
            if (list.left(step).isEmpty() || list.isOver(step)) {
                list.startTimer(step);
            } else {
                list.stopTimer(step);
            }
        }));
        timer.setVisible(step.timer().isPresent());
        timer.managedProperty().bind(timer.visibleProperty());
        getChildren().addAll(tick, timer);
    }

    Step step() {
        return step;
    }

    private void turn() {
        with(list -> list.tick(step, !done));
    }

    private void with(Consumer<DayList> act) {
        context.window().faults().guard(() -> context.model().dayList().ifPresent(act));
    }

    private List<Node> words() {
        Region mark = new Region();
        mark.getStyleClass().add("step-tick");
        StackPane box = new StackPane(mark);
        box.getStyleClass().add("step-box");
        QuantityFormat words = context.model().words();
        VBox text = new VBox(1, Labels.of(words.of(step.words()), "step-words"));
        step.oxygen().ifPresent(habit -> text.getChildren().add(Labels.of(words.of(habit), "step-oxygen")));
        step.caution()
                .ifPresent(caution -> text.getChildren()
                        .add(Labels.of(
                                context.messages().of("bottling.step.caution", words.of(caution)), "step-caution")));
        text.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(text, Priority.ALWAYS);
        return List.of(box, text);
    }

    private void key(KeyEvent event) {
        int move = Shortcut.STEP_BEFORE.matches(event) ? -1 : Shortcut.STEP_AFTER.matches(event) ? 1 : 0;
        if (Shortcut.TICK.matches(event)) {
            turn();
            event.consume();
        } else if (move != 0) {
            int other = getParent().getChildrenUnmodifiable().indexOf(this) + move;
            if (other >= 0 && other < getParent().getChildrenUnmodifiable().size()) {
                ((StepView) getParent().getChildrenUnmodifiable().get(other)).tick.requestFocus();
            }
            event.consume();
        }
    }

    void show(DayList list) {
        done = list.checklist().isDone(step.id());
        tick.pseudoClassStateChanged(DONE, done);
        tick.setAccessibleText(context.messages()
                .of(
                        done ? "bottling.step.done" : "bottling.step.open",
                        context.model().words().of(step.words())));
        boolean next = list.checklist().next().filter(step::equals).isPresent();
        pseudoClassStateChanged(NEXT, next);
        showTimer(list);
    }

    /** The timer as it stands now; a finished one stays marked until its step is ticked. */
    void showTimer(DayList list) {
        if (step.timer().isEmpty()) {
            return;
        }
        String left = list.left(step);
        boolean over = list.isOver(step);
        String words = over
                ? context.messages().of("bottling.timer.over")
                : left.isEmpty()
                        ? context.messages()
                                .of("bottling.timer.start", step.timer().get().toMinutes())
                        : context.messages().of("bottling.timer.runs", left);
        if (!words.equals(timer.getText())) {
            timer.setText(words);
        }
        pseudoClassStateChanged(OVER, over && !list.checklist().isDone(step.id()));
    }
}
