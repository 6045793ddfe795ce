package undercroft.view.servings;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.servings.OccasionForm;
import undercroft.app.servings.ServingForm;
import undercroft.app.servings.ServingsViewModel;
import undercroft.outlook.serving.ServingChoice;
import undercroft.session.BackgroundTasks;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.form.FormGrid;

/** Guests to come, and the batches that might be poured for them, best first, with reasons. */
final class ServingChoiceView extends VBox {
    private static final int SHOWN_AT_FIRST = 5;

    private final ServingsViewModel model;
    private final WindowContext context;
    private final OccasionForm form;
    private final VBox choices = new VBox();
    private final BackgroundTasks.Line line;
    private boolean showsAll;

    ServingChoiceView(ServingsViewModel model, WindowContext context) {
        this.model = model;
        this.context = context;
        this.line = context.tasks().line();
        form = new OccasionForm(
                context.messages(),
                context.workspace().getCellar(),
                context.clock().instant());
        getStyleClass().add("which-batch");
        setId("which-batch");
        Label title = new Label(context.messages().of("servings.which.title"));
        title.getStyleClass().add("section-title");
        FormGrid grid = FormGrid.stacked();
        grid.getStyleClass().add("occasion");
        grid.field(form.at()).line(context.messages().of("servings.which.guests"), form.guests(), form.each());
        choices.getStyleClass().add("serving-choices");
        getChildren().addAll(title, grid, choices);
        form.occasionProperty().addListener((property, before, after) -> fill());
        context.forecasts().outlookProperty().addListener((property, before, after) -> fill());
        fill();
    }

    private void fill() {
        Optional<OccasionForm.Occasion> occasion = form.occasionProperty().get();
        if (occasion.isEmpty()) {
            line.drop();
            choices.getChildren().clear();
            return;
        }
        line.run(model.choices(occasion.get()), all -> show(all, occasion.get()), context.faults()::show);
    }

    private void show(List<ServingChoice> all, OccasionForm.Occasion occasion) {
        choices.getChildren().clear();
        if (all.isEmpty()) {
            Label none = new Label(context.messages().of("servings.which.none"));
            none.getStyleClass().add("faint");
            choices.getChildren().add(none);
        }
        int shown = showsAll ? all.size() : Math.min(SHOWN_AT_FIRST, all.size());
        for (int i = 0; i < shown; i++) {
            choices.getChildren().add(row(i + 1, all.get(i), occasion));
        }
        if (shown < all.size()) {
            Button more = new Button(context.messages().of("servings.which.more", all.size() - shown));
            more.getStyleClass().add("quiet");
            more.setOnAction(event -> {
                showsAll = true;
                show(all, occasion);
            });
            choices.getChildren().add(more);
        }
    }

    private Node row(int rank, ServingChoice choice, OccasionForm.Occasion occasion) {
        Label name = new Label(context.messages().of("servings.which.rank", rank, model.nameOf(choice)));
        name.getStyleClass().add("todo-what");
        Label reasons = new Label(String.join(" · ", model.reasons(choice)));
        reasons.getStyleClass().add("faint");
        reasons.setWrapText(true);
        reasons.setMinHeight(Region.USE_PREF_SIZE);
        VBox words = new VBox(1, name, reasons);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button plan = new Button(context.messages().of("servings.which.plan"));
        plan.setId("plan-" + choice.batchId());
        plan.setMinWidth(Region.USE_PREF_SIZE);
        plan.getStyleClass().add("quiet");
        plan.setAccessibleText(context.messages().of("servings.which.plan-sentence", model.nameOf(choice)));
        plan.setDisable(choice.free() == 0);
        plan.setOnAction(event -> context.editors()
                .addServing(new ServingForm.Wish(
                        Optional.of(choice.batchId()),
                        Math.max(1, Math.min(choice.free(), occasion.bottles())),
                        Optional.of(occasion.at()))));
        HBox row = new HBox(8, words, plan);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("serving-choice");
        return row;
    }
}
