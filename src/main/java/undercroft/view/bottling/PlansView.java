package undercroft.view.bottling;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.NewPlanForm;
import undercroft.cellar.Batch;
import undercroft.view.kit.form.FormGrid;

/** Plans to go on with, and what is asked to begin a new one. */
final class PlansView extends ScrollPane {
    private final BottlingContext context;
    private final VBox list = new VBox(6);

    PlansView(BottlingContext context) {
        this.context = context;
        VBox content = new VBox(
                10,
                Labels.of(context.messages().of("bottling.plans.title"), "batch-title"),
                Labels.of(context.messages().of("bottling.plans.text"), "faint"),
                new Columns(plans(), begin()));
        content.getStyleClass().addAll("form", "bottling-card");
        setContent(content);
        setFitToWidth(true);
        setFitToHeight(true);
        setFocusTraversable(false);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        fill();
    }

    private VBox plans() {
        return new VBox(4, Labels.section(context.messages().of("bottling.plans.go-on")), list);
    }

    void fill() {
        list.getChildren().clear();
        for (Batch planned : context.model().plansProperty().get()) {
            list.getChildren().add(line(planned));
        }
        if (list.getChildren().isEmpty()) {
            list.getChildren().add(Labels.of(context.messages().of("bottling.plans.none"), "faint"));
        }
    }

    private Node line(Batch planned) {
        Label name = new Label(planned.name());
        name.getStyleClass().add("todo-what");
        Label about = new Label(context.messages()
                .of("words.list.joint", planned.beer().kind(), context.model().litres(planned)));
        about.getStyleClass().add("faint");
        Button open = new Button(null, new VBox(2, name, about));
        open.setId("draft-" + planned.id());
        open.getStyleClass().add("draft-line");
        open.setMaxWidth(Double.MAX_VALUE);
        open.setAccessibleText(context.messages().of("bottling.plans.open", planned.name()));
        open.setOnAction(
                event -> context.window().faults().guard(() -> context.model().open(planned.id())));
        HBox.setHgrow(open, Priority.ALWAYS);
        Button delete = new Button(context.messages().of("bottling.plans.delete"));
        delete.getStyleClass().add("quiet");
        delete.setMinWidth(Region.USE_PREF_SIZE);
        delete.setAccessibleText(context.messages().of("undo.batch.deleted", planned.name()));
        delete.setOnAction(
                event -> context.window().faults().guard(() -> context.model().delete(planned)));
        HBox line = new HBox(8, open, delete);
        line.getStyleClass().add("draft-row");
        return line;
    }

    private VBox begin() {
        NewPlanForm form = context.model().newPlan();
        Button start = new Button(context.messages().of("bottling.plans.start"));
        start.setId("draft-start");
        start.getStyleClass().add("accent");
        start.setDefaultButton(true);
        start.setOnAction(event -> {
            if (form.showFaults().isEmpty() && form.canSave()) {
                context.window().faults().guard(() -> context.model().start(form));
            }
        });
        return new VBox(
                6,
                Labels.section(context.messages().of("bottling.plans.new")),
                new FormGrid().fields(form.fields()),
                FormGrid.fault(form.faultProperty()),
                start);
    }
}
