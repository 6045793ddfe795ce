package undercroft.view.kit;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.outlook.lot.Alert;
import undercroft.wording.Messages;

/** What to heed before touching bottles under pressure, in the flow of the page. */
public final class CautionView extends HBox {
    public CautionView(Messages messages, Alert alert, List<String> sentences) {
        super(12);
        getStyleClass().addAll("caution", AlertSign.styleClass(alert));
        setId("caution");
        Label title = new Label(messages.of(alert == Alert.ACT ? "caution.act.title" : "caution.watch.title"));
        title.getStyleClass().add("caution-title");
        Label text = new Label(String.join(" ", sentences));
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        VBox words = new VBox(2, title, text);
        HBox.setHgrow(words, Priority.ALWAYS);
        AlertSign sign = new AlertSign(alert);
        getChildren().addAll(sign, words);
    }
}
