package undercroft.view.start;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.view.kit.CellarChooser;
import undercroft.wording.Messages;

/** One click each: the demo, a folder, a cellar opened before. */
final class OtherWaysView extends VBox {
    private static final int MOST_RECENT = 5;

    OtherWaysView(Messages messages, CellarChooser chooser, boolean dark) {
        super(16);
        Button demo = new Button(messages.of("start.demo.button"));
        demo.setId("start-demo");
        demo.setOnAction(event -> chooser.demo());
        Button folder = new Button(messages.of("start.folder.button"));
        folder.setId("start-open");
        folder.setOnAction(event -> chooser.open());
        VBox first = card(messages, "start.demo.title", new SampleShelf(dark), "start.demo.text", demo);
        VBox second = card(messages, "start.folder.title", null, "start.folder.text", folder);
        second.getChildren().add(recent(messages, chooser));
        VBox.setVgrow(second, Priority.ALWAYS);
        getChildren().addAll(first, second);
    }

    private static VBox card(Messages messages, String titleKey, Node picture, String textKey, Button button) {
        Label title = new Label(messages.of(titleKey));
        title.getStyleClass().add("start-title");
        title.setMinWidth(USE_PREF_SIZE);
        Label text = new Label(messages.of(textKey));
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        text.getStyleClass().add("empty-text");
        VBox card = new VBox(10, title);
        if (picture != null) {
            card.getChildren().add(picture);
        }
        card.getChildren().addAll(text, button);
        card.getStyleClass().add("start-card");
        return card;
    }

    private static Node recent(Messages messages, CellarChooser chooser) {
        Label title = new Label(messages.of("start.recent.title"));
        title.getStyleClass().add("start-strong");
        VBox list = new VBox(2, title);
        list.setId("start-recent");
        for (CellarChooser.Recent each :
                chooser.recent().stream().limit(MOST_RECENT).toList()) {
            Hyperlink link = new Hyperlink(each.name());
            link.setOnAction(event -> chooser.reopen(each));
            link.setMinWidth(USE_PREF_SIZE);
            Label folder = new Label(each.folder());
            folder.getStyleClass().add("faint");
            HBox row = new HBox(8, link, folder);
            row.setAlignment(Pos.CENTER_LEFT);
            list.getChildren().add(row);
        }
        if (list.getChildren().size() == 1) {
            Label none = new Label(messages.of("start.recent.none"));
            none.getStyleClass().add("faint");
            none.setWrapText(true);
            none.setMinHeight(USE_PREF_SIZE);
            list.getChildren().add(none);
        }
        return list;
    }
}
