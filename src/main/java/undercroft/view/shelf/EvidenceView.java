package undercroft.view.shelf;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Messages;

/** What may explain what was seen of a batch: each explanation with its chance before anything was seen, and now. */
final class EvidenceView extends VBox {
    /** Chances far from what they are about are read in the wrong line. */
    private static final double TABLE_WIDTH = 560;

    EvidenceView(Messages messages, List<EvidenceWords.Line> lines, Runnable more) {
        getStyleClass().addAll("card", "evidence");
        setId("evidence");
        Label title = new Label(messages.of("evidence.title"));
        title.getStyleClass().add("section-title");
        GridPane table = new GridPane();
        table.getStyleClass().add("evidence-table");
        table.setMaxWidth(TABLE_WIDTH);
        table.setHgap(14);
        table.setVgap(2);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        table.getColumnConstraints().add(words);
        table.add(faint(messages.of("evidence.before")), 1, 0);
        table.add(faint(messages.of("evidence.now")), 2, 0);
        for (int i = 0; i < lines.size(); i++) {
            EvidenceWords.Line line = lines.get(i);
            Label what = new Label(line.what());
            what.setWrapText(true);
            table.addRow(i + 1, what, faint(line.before()), new Label(line.now()));
        }
        Label means = faint(messages.of("evidence.means"));
        means.setWrapText(true);
        means.setMinHeight(USE_PREF_SIZE);
        Button open = new Button(messages.of("evidence.page.open"));
        open.setId("evidence-open");
        open.getStyleClass().add("quiet");
        open.setOnAction(event -> more.run());
        getChildren().addAll(title, table, means, open);
    }

    private static Label faint(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("faint");
        return label;
    }
}
