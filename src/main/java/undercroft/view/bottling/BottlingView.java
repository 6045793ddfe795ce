package undercroft.view.bottling;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import undercroft.app.bottling.BottlingViewModel;
import undercroft.app.bottling.DraftForm;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.form.FormGrid;

/** Bottling day: the drafts, or the one that is open. */
public final class BottlingView extends StackPane {
    private final BottlingViewModel model;
    private final BottlingContext bench;

    /** {@code whenCapped} is told the batch that now stands on the shelf. */
    public BottlingView(WindowContext parts, Consumer<String> whenCapped) {
        this(parts, whenCapped, new FilePicker());
    }

    BottlingView(WindowContext parts, Consumer<String> whenCapped, Printouts.Picker picker) {
        model = new BottlingViewModel(parts.workspace(), parts.clock(), whenCapped);
        bench = new BottlingContext(model, parts, new Printouts(parts, picker));
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
            if (shown() instanceof DraftPane pane) {
                pane.turnTo(after);
            }
        });
        model.draftsProperty().addListener((property, before, after) -> {
            if (shown() instanceof DraftsPane pane) {
                pane.fill();
            }
        });
        parts.dark().addListener((property, before, after) -> {
            if (shown() instanceof DraftPane pane) {
                pane.repaint();
            }
        });
        turnTo(null);
    }

    private Node shown() {
        return getChildren().isEmpty() ? null : getChildren().get(0);
    }

    /** Opens the draft of a batch that is not capped. */
    public void open(String batchId) {
        model.open(batchId);
    }

    private void turnTo(DraftForm form) {
        getChildren().setAll(form == null ? new DraftsPane(bench) : new DraftPane(bench, form));
    }
}
