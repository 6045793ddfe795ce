package undercroft.view.shelf;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.TimeViewModel;
import undercroft.app.evidence.EvidenceViewModel;
import undercroft.app.shelf.BatchViewModel;
import undercroft.app.shelf.CompareViewModel;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.view.kit.Widths;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.keys.Shortcut;

/**
 * The shelf with its inspector, or the batch that was opened from it; in a wide window the shelf stays beside the batch.
 */
public final class ShelfPage extends VBox {
    /** From here on there is room for two columns. */
    private static final double WIDE = 1120;

    private static final double WIDEST = 1500;
    private static final double INSPECTOR = 300;
    private static final double WIDER_INSPECTOR = 360;
    private static final double COLUMN = 320;

    private final ShelfViewModel model;
    private final ShelfView shelf;
    private final InspectorView inspector;
    private final Supplier<BatchView> batchMaker;
    private final CompareViewModel compare;
    private final Supplier<CompareView> compareMaker;
    private BatchView batch;
    private final EvidenceViewModel evidence;
    private final Supplier<? extends Node> evidenceMaker;
    private CompareView compareView;
    private Node evidencePage;
    private final HBox row = new HBox();
    private boolean wide = true;

    /** {@code planBatch} leads to the bottling day of a batch that is not capped; {@code evidencePage} is made when it is asked for. */
    public static ShelfPage of(
            ShelfViewModel model,
            BatchViewModel batch,
            ToDoViewModel toDo,
            ToDoActions actions,
            WindowContext context,
            TimeViewModel time,
            Consumer<String> planBatch,
            EvidenceViewModel evidence,
            Supplier<? extends Node> evidencePage) {
        CompareViewModel compare = new CompareViewModel(context.forecasts().outlookProperty(), context.messages());
        Runnable open = () -> model.batchOpenProperty().set(true);
        Runnable back = () -> model.batchOpenProperty().set(false);
        return new ShelfPage(
                model,
                new ShelfView(model, context, time, compare),
                new InspectorView(context.messages(), batch, toDo, actions, open),
                () -> new BatchView(batch, toDo, actions, context, back, planBatch, compare, evidence),
                compare,
                () -> new CompareView(compare, context, context.messages(), compare::stop),
                evidence,
                evidencePage);
    }

    /** Puts the keyboard on the crates. */
    public void takeFocus() {
        shelf.takeFocus();
    }

    private ShelfPage(
            ShelfViewModel model,
            ShelfView shelf,
            InspectorView inspector,
            Supplier<BatchView> batchMaker,
            CompareViewModel compare,
            Supplier<CompareView> compareMaker,
            EvidenceViewModel evidence,
            Supplier<? extends Node> evidenceMaker) {
        this.model = model;
        this.shelf = shelf;
        this.inspector = inspector;
        this.batchMaker = batchMaker;
        this.compare = compare;
        this.compareMaker = compareMaker;
        this.evidence = evidence;
        this.evidenceMaker = evidenceMaker;
        getStyleClass().add("middle");
        setMinWidth(0);
        row.setMinWidth(0);
        row.getStyleClass().add("middle-row");
        VBox.setVgrow(row, Priority.ALWAYS);
        Widths.follow(this, width -> {
            wide = width >= WIDE;
            inspector.setPrefWidth(width >= WIDEST ? WIDER_INSPECTOR : INSPECTOR);
            arrange();
        });
        model.batchOpenProperty().addListener((property, before, after) -> {
            arrange();
            // What was pressed to open it is gone; the crates beside it go on taking the arrow keys.
            if (!after || wide) {
                shelf.takeFocus();
            } else {
                batch().takeFocus();
            }
        });
        compare.chosenProperty().addListener((property, before, after) -> {
            if (before.isEmpty() != after.isEmpty()) {
                arrange();
            }
        });
        evidence.batchIdProperty().addListener((property, before, after) -> {
            arrange();
            if (!after.isEmpty()) {
                evidencePage().requestFocus();
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        arrange();
    }

    /** Made when it is first looked at, as a start should not wait for it. */
    private BatchView batch() {
        if (batch == null) {
            batch = batchMaker.get();
            batch.setMinWidth(0);
            HBox.setHgrow(batch, Priority.ALWAYS);
        }
        return batch;
    }

    private CompareView compareView() {
        if (compareView == null) {
            compareView = compareMaker.get();
            HBox.setHgrow(compareView, Priority.ALWAYS);
        }
        return compareView;
    }

    private Node evidencePage() {
        if (evidencePage == null) {
            evidencePage = evidenceMaker.get();
            HBox.setHgrow(evidencePage, Priority.ALWAYS);
        }
        return evidencePage;
    }

    private void arrange() {
        boolean open = model.batchOpenProperty().get();
        inspector.setVisible(!open);
        inspector.standBeside(wide);
        HBox.setHgrow(shelf, open ? Priority.NEVER : Priority.ALWAYS);
        shelf.setPrefWidth(COLUMN);
        shelf.setMinWidth(open ? COLUMN : 0);
        inspector.setMinWidth(wide ? inspector.getPrefWidth() : 0);
        if (!evidence.batchIdProperty().get().isEmpty()) {
            inspector.setVisible(false);
            show(new Node[] {evidencePage()}, false);
        } else if (!compare.chosenProperty().get().isEmpty()) {
            inspector.setVisible(false);
            show(new Node[] {compareView()}, false);
        } else if (open) {
            show(wide ? new Node[] {shelf, batch()} : new Node[] {batch()}, false);
        } else if (wide) {
            show(new Node[] {shelf, inspector}, false);
        } else {
            show(new Node[] {shelf}, true);
        }
    }

    private void show(Node[] nodes, boolean inspectorBelow) {
        // Taking a node out and in again would drop what is being dragged or typed in it.
        if (!row.getChildren().equals(List.of(nodes))) {
            row.getChildren().setAll(nodes);
        }
        List<Node> all = inspectorBelow ? List.of(row, inspector) : List.of(row);
        if (!getChildren().equals(all)) {
            getChildren().setAll(all);
        }
    }

    private void key(KeyEvent event) {
        if (Shortcut.FIND.matches(event)) {
            if (!wide) {
                model.batchOpenProperty().set(false);
            }
            shelf.find();
            event.consume();
            return;
        }
        if (Shortcut.LEAVE.matches(event) && !compare.chosenProperty().get().isEmpty()) {
            compare.stop();
            event.consume();
        } else if (Shortcut.LEAVE.matches(event) && model.batchOpenProperty().get()) {
            model.batchOpenProperty().set(false);
            event.consume();
        } else if (Shortcut.NEXT_BATCH.matches(event)) {
            model.move(ShelfViewModel.Step.NEXT);
            event.consume();
        } else if (Shortcut.PREVIOUS_BATCH.matches(event)) {
            model.move(ShelfViewModel.Step.PREVIOUS);
            event.consume();
        }
    }
}
