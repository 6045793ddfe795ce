package undercroft.view;

import java.util.List;
import java.util.function.Consumer;
import javafx.event.ActionEvent;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;
import undercroft.app.Texts;
import undercroft.app.TonightViewModel;
import undercroft.outlook.Alert;
import undercroft.outlook.CellarOutlook;

/** The short list of what to do, in one strip; what does not fit opens from a button. */
final class TonightStrip extends HBox {
    private static final double LEAST_WIDTH_A_LINE = 300;
    private static final double TITLE_AND_MORE = 210;

    private final TonightViewModel model;
    private final Consumer<String> chooseBatch;
    private final Parts parts;
    private int shownWidth;

    TonightStrip(TonightViewModel model, Parts parts, Consumer<String> chooseBatch) {
        this.model = model;
        this.parts = parts;
        this.chooseBatch = chooseBatch;
        getStyleClass().add("tonight");
        setId("tonight");
        setAlignment(Pos.CENTER_LEFT);
        model.linesProperty().addListener((property, before, after) -> fill());
        parts.forecasts().outlookProperty().addListener((property, before, after) -> {
            if (before == null) {
                fill();
            }
        });
        widthProperty().addListener((property, before, after) -> {
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
        List<TonightViewModel.Line> lines = model.linesProperty().get();
        shownWidth = room();
        CellarOutlook outlook = parts.forecasts().outlookProperty().get();
        if (outlook == null) {
            getChildren().setAll(working());
            return;
        }
        getChildren().setAll(title(lines.size()));
        if (lines.isEmpty()) {
            getChildren().add(nothing());
        }
        for (TonightViewModel.Line line : lines.subList(0, Math.min(shownWidth, lines.size()))) {
            Button button = button(line);
            HBox.setHgrow(button, Priority.ALWAYS);
            getChildren().add(button);
        }
        if (lines.size() > shownWidth) {
            getChildren().add(more(lines.subList(shownWidth, lines.size())));
        }
    }

    private static Node title(int count) {
        Label title = new Label(Texts.of("tonight.title"));
        title.getStyleClass().add("section-title");
        Label sum = new Label(Texts.counted("tonight.count", count));
        sum.getStyleClass().add("faint");
        VBox box = new VBox(title, sum);
        box.getStyleClass().add("tonight-title");
        box.setMinWidth(USE_PREF_SIZE);
        return box;
    }

    /** Before the first outlook nothing is known, least of all that all is well. */
    private static Node working() {
        Label working = new Label(Texts.of("tonight.working"));
        working.getStyleClass().addAll("faint", "tonight-title");
        working.setMinHeight(44);
        return working;
    }

    private static Node nothing() {
        Label what = new Label(Texts.of("tonight.none.what"));
        what.getStyleClass().add("tonight-what");
        Label why = new Label(Texts.of("tonight.none.why"));
        why.getStyleClass().add("faint");
        HBox line = new HBox(10, new AlertSign(Alert.CLEAR), new VBox(what, why));
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("tonight-nothing");
        return line;
    }

    private Button button(TonightViewModel.Line line) {
        Label what = new Label(line.what());
        what.getStyleClass().add("tonight-what");
        Label why =
                new Label(line.when().isEmpty() ? line.why() : Texts.of("words.list.joint", line.when(), line.why()));
        why.getStyleClass().add("faint");
        HBox content = new HBox(10, new AlertSign(line.alert()), new VBox(what, why));
        content.setAlignment(Pos.CENTER_LEFT);
        Button button = new Button(null, content);
        button.getStyleClass().add("tonight-line");
        button.setMaxWidth(Double.MAX_VALUE);
        button.setPrefWidth(LEAST_WIDTH_A_LINE - 20);
        button.setMinWidth(120);
        button.setAlignment(Pos.CENTER_LEFT);
        button.setAccessibleText(Texts.of("tonight.line.sentence", line.alert().label(), line.what(), why.getText()));
        button.setTooltip(new Tooltip(button.getAccessibleText()));
        button.setOnAction(event -> chooseBatch.accept(line.batchId()));
        return button;
    }

    private Button more(List<TonightViewModel.Line> rest) {
        Button more = new Button(Texts.of("tonight.more.button", rest.size()));
        more.setId("tonight-more");
        more.setMinWidth(USE_PREF_SIZE);
        more.getStyleClass().add("quiet");
        more.setOnAction(event -> {
            VBox list = new VBox(2);
            for (TonightViewModel.Line line : rest) {
                Button button = button(line);
                button.setPrefWidth(380);
                button.addEventHandler(
                        ActionEvent.ACTION,
                        chosen -> button.getScene().getWindow().hide());
                list.getChildren().add(button);
            }
            Popovers.show(
                    more, list, PopOver.ArrowLocation.TOP_RIGHT, parts.dark().get());
        });
        return more;
    }
}
