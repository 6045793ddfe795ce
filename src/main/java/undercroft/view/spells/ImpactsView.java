package undercroft.view.spells;

import java.time.Instant;
import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.spells.SpellPage;
import undercroft.app.spells.SpellTables;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.CautionView;
import undercroft.view.kit.SavedFiles;
import undercroft.wording.Messages;

/** What a spell did, batch by batch, under what is to be done. */
final class ImpactsView extends VBox {
    private final Messages messages;
    private final BiConsumer<String, Instant> openBatch;
    private final SavedFiles files;

    ImpactsView(Messages messages, SavedFiles files, BiConsumer<String, Instant> openBatch) {
        this.messages = messages;
        this.files = files;
        this.openBatch = openBatch;
        getStyleClass().add("toll-list");
        setId("tolls");
    }

    void show(SpellPage page) {
        getChildren().clear();
        if (page == null) {
            return;
        }
        Label title = words(page.title(), "spell-title");
        title.setId("spell-title");
        getChildren().addAll(title, words(page.summary(), "faint"));
        if (!page.caution().isEmpty()) {
            getChildren().add(new CautionView(messages, page.alert(), page.caution()));
        }
        for (SpellPage.Group group : page.groups()) {
            getChildren().add(words(group.advice(), "toll-advice"));
            group.lines().forEach(line -> getChildren().add(card(line)));
        }
        if (!page.groups().isEmpty()) {
            getChildren()
                    .add(TableButton.of(
                            "spell-table", messages, files, "warm-spell", () -> SpellTables.of(page, messages)));
        }
    }

    private Node card(SpellPage.Line line) {
        Label name = new Label(line.name());
        name.getStyleClass().add("toll-name");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button open = new Button(messages.of("spells.open.button"));
        open.getStyleClass().add("quiet");
        open.setMinWidth(USE_PREF_SIZE);
        open.setAccessibleText(messages.of("spells.open.sentence", line.name()));
        open.setId("open-" + line.batchId());
        open.setOnAction(event -> openBatch.accept(line.batchId(), line.worst()));
        Region alert = AlertSign.withWord(messages, line.alert());
        alert.setMinWidth(USE_PREF_SIZE);
        HBox head = new HBox(8, name, alert, space, open);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox card = new VBox(
                3, head, words(line.verdict(), "toll-verdict"), words(String.join(" · ", line.figures()), "faint"));
        card.getStyleClass().add("toll");
        if (line.isChosen()) {
            card.getStyleClass().add("chosen");
        }
        return card;
    }

    private static Label words(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
