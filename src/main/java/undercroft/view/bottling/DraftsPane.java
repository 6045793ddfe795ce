package undercroft.view.bottling;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.NewDraftForm;
import undercroft.cellar.Batch;
import undercroft.view.kit.form.FormGrid;
import undercroft.wording.Texts;

/** Drafts to go on with, and what is asked to begin a new one. */
final class DraftsPane extends ScrollPane {
    private final BottlingContext bench;
    private final VBox list = new VBox(6);

    DraftsPane(BottlingContext bench) {
        this.bench = bench;
        VBox content = new VBox(
                10,
                Words.of(Texts.of("bottling.drafts.title"), "batch-title"),
                Words.of(Texts.of("bottling.drafts.text"), "faint"),
                Words.columns(drafts(), begin()));
        content.getStyleClass().addAll("form", "bottling-card");
        setContent(content);
        setFitToWidth(true);
        setFitToHeight(true);
        setFocusTraversable(false);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        fill();
    }

    private VBox drafts() {
        return new VBox(4, Words.section(Texts.of("bottling.drafts.go-on")), list);
    }

    void fill() {
        list.getChildren().clear();
        for (Batch draft : bench.model().draftsProperty().get()) {
            list.getChildren().add(line(draft));
        }
        if (list.getChildren().isEmpty()) {
            list.getChildren().add(Words.of(Texts.of("bottling.drafts.none"), "faint"));
        }
    }

    private Node line(Batch draft) {
        Label name = new Label(draft.name());
        name.getStyleClass().add("tonight-what");
        Label about = new Label(Texts.of(
                "words.list.joint", draft.beer().kind().label(), bench.model().litres(draft)));
        about.getStyleClass().add("faint");
        Button open = new Button(null, new VBox(2, name, about));
        open.setId("draft-" + draft.id());
        open.getStyleClass().add("draft-line");
        open.setMaxWidth(Double.MAX_VALUE);
        open.setAccessibleText(Texts.of("bottling.drafts.open", draft.name()));
        open.setOnAction(
                event -> bench.parts().faults().guard(() -> bench.model().open(draft.id())));
        HBox.setHgrow(open, Priority.ALWAYS);
        Button delete = new Button(Texts.of("bottling.drafts.delete"));
        delete.getStyleClass().add("quiet");
        delete.setMinWidth(Region.USE_PREF_SIZE);
        delete.setAccessibleText(Texts.of("undo.batch.deleted", draft.name()));
        delete.setOnAction(
                event -> bench.parts().faults().guard(() -> bench.model().delete(draft)));
        HBox line = new HBox(8, open, delete);
        line.getStyleClass().add("draft-row");
        return line;
    }

    private VBox begin() {
        NewDraftForm form = bench.model().newDraft();
        Button start = new Button(Texts.of("bottling.drafts.start"));
        start.setId("draft-start");
        start.getStyleClass().add("accent");
        start.setDefaultButton(true);
        start.setOnAction(event -> {
            if (form.showFaults().isEmpty() && form.canSave()) {
                bench.parts().faults().guard(() -> bench.model().start(form));
            }
        });
        return new VBox(
                6,
                Words.section(Texts.of("bottling.drafts.new")),
                new FormGrid().fields(form.fields()),
                FormGrid.fault(form.faultProperty()),
                start);
    }
}
