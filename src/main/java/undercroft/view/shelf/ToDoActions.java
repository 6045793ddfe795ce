package undercroft.view.shelf;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;
import undercroft.app.servings.ServingForm;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.app.shelf.ToDoViewModel.Line;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.outlook.task.Task;
import undercroft.view.kit.Editors;
import undercroft.view.kit.Popovers;
import undercroft.view.kit.WindowContext;

/** What can be said to a line of To do: the one action that fits, done, later, dismiss. */
public final class ToDoActions {
    private final ToDoViewModel model;
    private final WindowContext context;
    private final Consumer<String> chooseBatch;
    private final Consumer<String> chooseServing;

    /** The two consumers show a batch on the shelf, and a pour on its page. */
    public ToDoActions(
            ToDoViewModel model, WindowContext context, Consumer<String> chooseBatch, Consumer<String> chooseServing) {
        this.model = model;
        this.context = context;
        this.chooseBatch = chooseBatch;
        this.chooseServing = chooseServing;
    }

    void open(Line line) {
        if (line.task().kind() == Task.Kind.CHILL) {
            chooseServing.accept(line.task().part());
        } else {
            chooseBatch.accept(line.batchId());
        }
    }

    /** The buttons of a line; {@code afterwards} runs first, so that a popover is gone before a dialog opens. */
    FlowPane buttons(Line line, Runnable afterwards) {
        FlowPane row = new FlowPane(2, 2);
        row.getStyleClass().add("todo-actions");
        row.getChildren()
                .addAll(
                        button("do", context.messages().of(key(line.task().kind())), afterwards, () -> act(line)),
                        button("done", context.messages().of("todo.action.done"), afterwards, () -> model.done(line)),
                        button(
                                "tomorrow",
                                context.messages().of("todo.action.tomorrow"),
                                afterwards,
                                () -> model.postpone(line, 1)),
                        button(
                                "week",
                                context.messages().of("todo.action.week"),
                                afterwards,
                                () -> model.postpone(line, 7)),
                        button(
                                "dismiss",
                                context.messages().of("todo.action.dismiss"),
                                afterwards,
                                () -> model.dismiss(line)));
        return row;
    }

    /** Why it is to be done, and when where that is not now. */
    String because(Line line) {
        return line.when().isEmpty() ? line.why() : context.messages().of("words.list.joint", line.when(), line.why());
    }

    /** The one action that fits. */
    Button first(Line line) {
        return button("do", context.messages().of(key(line.task().kind())), () -> {}, () -> act(line));
    }

    /** Whether the one action that fits is to look at the batch, which is nothing to do where it is shown already. */
    static boolean isToShow(Line line) {
        return key(line.task().kind()).equals("todo.action.show");
    }

    Button done(Line line) {
        return button("done", context.messages().of("todo.action.done"), () -> {}, () -> model.done(line));
    }

    /** Opens all that can be said to the line. */
    Button menu(Line line) {
        Button menu = new Button(context.messages().of("todo.line.menu"));
        menu.setMinWidth(Region.USE_PREF_SIZE);
        menu.getStyleClass().addAll("quiet", "todo-menu");
        menu.setAccessibleText(context.messages().of("todo.line.menu-sentence", line.what()));
        menu.setTooltip(new Tooltip(menu.getAccessibleText()));
        menu.setOnAction(event -> Popovers.show(
                menu,
                hide -> card(line, hide),
                PopOver.ArrowLocation.TOP_RIGHT,
                context.dark().get()));
        return menu;
    }

    /** The whole line in words, with its buttons. */
    VBox card(Line line, Runnable afterwards) {
        Label what = new Label(line.what());
        what.getStyleClass().add("todo-what");
        what.setWrapText(true);
        Label why = new Label(because(line));
        why.getStyleClass().add("faint");
        why.setWrapText(true);
        VBox card = new VBox(4, what, why, buttons(line, afterwards));
        card.getStyleClass().add("todo-card");
        card.setPrefWidth(440);
        return card;
    }

    private Button button(String id, String words, Runnable afterwards, Runnable act) {
        Button button = new Button(words);
        button.setId("todo-" + id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> {
            afterwards.run();
            context.faults().guard(act);
        });
        return button;
    }

    private static String key(Task.Kind kind) {
        return switch (kind) {
            case MOVE_COOLER, MOVE_WARMER, MOVE_FROM_FROST, COVER_FROM_LIGHT -> "todo.action.move";
            case READ_AFTER_BURST, READ_GAUGE, READ_GAUGE_DAILY, CHECK_CARBONATION -> "todo.action.read";
            case OPEN_GAUGE_BOTTLE -> "todo.action.experiment";
            case CHILL -> "todo.action.serving";
            case FIRST_TASTE -> "todo.action.draw";
            case DRINK_SOON -> "todo.action.plan";
            case CLOSE_BATCH -> "todo.action.notes";
            case COOL_BEFORE_TOUCHING, THAW_IN_THE_COLD, LOOK_AT_THE_OTHERS, OPEN_COLD, CHECK_READINGS, PRINT_LABEL ->
                "todo.action.show";
        };
    }

    private void act(Line line) {
        Cellar cellar = context.workspace().getCellar();
        Batch batch = cellar.batch(line.batchId());
        Lot lot = lot(batch, line.task().part());
        Editors editors = context.editors();
        switch (line.task().kind()) {
            case MOVE_COOLER, MOVE_WARMER, MOVE_FROM_FROST, COVER_FROM_LIGHT -> editors.move(batch, lot);
            case READ_AFTER_BURST, READ_GAUGE, READ_GAUGE_DAILY, CHECK_CARBONATION -> editors.read(batch, lot);
            case OPEN_GAUGE_BOTTLE -> editors.experiment(batch, lot);
            case CHILL -> chooseServing.accept(line.task().part());
            case FIRST_TASTE -> editors.draw(batch, lot);
            case DRINK_SOON ->
                editors.addServing(
                        new ServingForm.Wish(Optional.of(batch.id()), Math.min(2, lot.left()), Optional.empty()));
            case CLOSE_BATCH -> editors.editNotes(batch);
            // Bottles that may burst are looked at before anything is done to them: the batch has what to heed.
            case COOL_BEFORE_TOUCHING, THAW_IN_THE_COLD, LOOK_AT_THE_OTHERS, OPEN_COLD, CHECK_READINGS, PRINT_LABEL ->
                chooseBatch.accept(batch.id());
        }
    }

    /** The lot the task is about, or the one with most bottles. */
    private static Lot lot(Batch batch, String lotId) {
        return batch.lots().stream()
                .filter(each -> each.id().equals(lotId))
                .findFirst()
                .or(() -> batch.lots().stream().max(Comparator.comparingInt(Lot::left)))
                .orElseThrow();
    }
}
