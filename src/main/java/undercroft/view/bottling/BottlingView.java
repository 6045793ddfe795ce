package undercroft.view.bottling;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import undercroft.app.bottling.BottlingViewModel;
import undercroft.app.bottling.PlanForm;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.form.FormGrid;

/** Bottling day: the plans, or the one that is open. */
public final class BottlingView extends StackPane {
    private final BottlingViewModel model;
    private final BottlingContext context;

    /** {@code whenCapped} is told the batch that now stands on the shelf. */
    public BottlingView(WindowContext window, Consumer<String> whenCapped) {
        this(window, whenCapped, new FilePicker(window.messages()));
    }

    BottlingView(WindowContext window, Consumer<String> whenCapped, Printouts.Picker picker) {
        model = new BottlingViewModel(window.messages(), window.workspace(), window.clock(), whenCapped);
        context = new BottlingContext(model, window, new Printouts(window, picker));
        setId("bottling");
        getStyleClass().add("bottling");
        getStylesheets()
                .setAll(List.of(
                        FormGrid.SHEET,
                        Objects.requireNonNull(BottlingView.class.getResource("day.css"))
                                .toExternalForm()));
        model.formProperty().addListener((property, before, after) -> turnTo(after));
        sceneProperty().addListener((property, before, after) -> model.keep());
        model.screenProperty().addListener((property, before, after) -> {
            if (shown() instanceof PlanView pane) {
                pane.turnTo(after);
            }
        });
        model.plansProperty().addListener((property, before, after) -> {
            if (shown() instanceof PlansView pane) {
                pane.fill();
            }
        });
        window.dark().addListener((property, before, after) -> {
            if (shown() instanceof PlanView pane) {
                pane.repaint();
            }
        });
        turnTo(null);
    }

    private Node shown() {
        return getChildren().isEmpty() ? null : getChildren().get(0);
    }

    /** Opens the plan of a batch that is not capped. */
    public void open(String batchId) {
        model.open(batchId);
    }

    private void turnTo(PlanForm form) {
        getChildren().setAll(form == null ? new PlansView(context) : new PlanView(context, form));
    }
}
