package undercroft.view.shelf;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.Popovers;
import undercroft.view.kit.Widths;
import undercroft.view.kit.WindowContext;
import undercroft.wording.AlertWords;

/** The short list of what to do, in one strip; what does not fit opens from a button. */
public final class ToDoView extends HBox {
    private static final double LEAST_WIDTH_A_LINE = 300;
    private static final double TITLE_AND_MORE = 210;

    private final ToDoViewModel model;
    private final ToDoActions actions;
    private final WindowContext context;
    private int shownWidth;

    public ToDoView(ToDoViewModel model, WindowContext context, ToDoActions actions) {
        this.model = model;
        this.context = context;
        this.actions = actions;
        getStyleClass().add("to-do");
        setId("to-do");
        setAlignment(Pos.CENTER_LEFT);
        model.linesProperty().addListener((property, before, after) -> fill());
        context.forecasts().outlookProperty().addListener((property, before, after) -> {
            if (before == null) {
                fill();
            }
        });
        Widths.follow(this, width -> {
            if (room() != shownWidth) {
                fill();
            }
        });
        fill();
    }

    private int room() {
        return Math.max(1, Math.min(5, (int) ((getWidth() - TITLE_AND_MORE) / LEAST_WIDTH_A_LINE)));
    }

    private void fill() {
        List<ToDoViewModel.Line> lines = model.linesProperty().get();
        shownWidth = room();
        CellarOutlook outlook = context.forecasts().outlookProperty().get();
        if (outlook == null) {
            getChildren().setAll(working());
            return;
        }
        getChildren().setAll(title(lines.size()));
        if (lines.isEmpty()) {
            getChildren().add(nothing());
        }
        for (ToDoViewModel.Line line : lines.subList(0, Math.min(shownWidth, lines.size()))) {
            Button button = button(line);
            HBox.setHgrow(button, Priority.ALWAYS);
            getChildren().addAll(button, actions.menu(line));
        }
        if (lines.size() > shownWidth || model.putAwayProperty().get() > 0) {
            getChildren().add(more(lines.subList(Math.min(shownWidth, lines.size()), lines.size())));
        }
    }

    private Node title(int count) {
        Label title = new Label(context.messages().of("todo.title"));
        title.getStyleClass().add("section-title");
        Label sum = new Label(context.messages().of("todo.count", count));
        sum.getStyleClass().add("faint");
        VBox box = new VBox(title, sum);
        box.getStyleClass().add("todo-title");
        box.setMinWidth(USE_PREF_SIZE);
        return box;
    }

    /** Before the first outlook nothing is known, least of all that all is well. */
    private Node working() {
        Label working = new Label(context.messages().of("todo.working"));
        working.getStyleClass().addAll("faint", "todo-title");
        working.setMinHeight(44);
        return working;
    }

    private Node nothing() {
        Label what = new Label(context.messages().of("todo.none.what"));
        what.getStyleClass().add("todo-what");
        Label why = new Label(context.messages().of("todo.none.why"));
        why.getStyleClass().add("faint");
        HBox line = new HBox(10, new AlertSign(Alert.CLEAR), new VBox(what, why));
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("todo-nothing");
        return line;
    }

    private Button button(ToDoViewModel.Line line) {
        Label what = new Label(line.what());
        what.getStyleClass().add("todo-what");
        Label why = new Label(actions.because(line));
        why.getStyleClass().add("faint");
        HBox content = new HBox(10, new AlertSign(line.alert()), new VBox(what, why));
        content.setAlignment(Pos.CENTER_LEFT);
        Button button = new Button(null, content);
        button.getStyleClass().add("todo-line");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setPrefWidth(LEAST_WIDTH_A_LINE - 20);
        button.setMinWidth(120);
        button.setAlignment(Pos.CENTER_LEFT);
        button.setAccessibleText(new AlertWords(context.messages())
                .before(line.alert(), context.messages().of("todo.line.sentence", line.what(), why.getText())));
        button.setTooltip(new Tooltip(button.getAccessibleText()));
        button.setOnAction(event -> actions.open(line));
        return button;
    }

    private Button more(List<ToDoViewModel.Line> rest) {
        Button more = new Button(
                rest.isEmpty()
                        ? context.messages().of("todo.away.button")
                        : context.messages().of("todo.more.button", rest.size()));
        more.setId("todo-more");
        more.setMinWidth(USE_PREF_SIZE);
        more.getStyleClass().add("quiet");
        more.setOnAction(event -> Popovers.show(
                more,
                hide -> rest(rest, hide),
                PopOver.ArrowLocation.TOP_RIGHT,
                context.dark().get()));
        return more;
    }

    private Node rest(List<ToDoViewModel.Line> rest, Runnable hide) {
        VBox list = new VBox(10);
        rest.forEach(line -> list.getChildren().add(actions.card(line, hide)));
        int away = model.putAwayProperty().get();
        if (away > 0) {
            Button back = new Button(context.messages().of("todo.away.back", away));
            back.setId("todo-back");
            back.getStyleClass().add("quiet");
            back.setOnAction(chosen -> {
                hide.run();
                model.bringBack();
            });
            list.getChildren().add(back);
        }
        return list;
    }
}
