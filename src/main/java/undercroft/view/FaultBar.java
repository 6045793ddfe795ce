package undercroft.view;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import undercroft.app.Faults;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;
import undercroft.wording.Messages;

/** The newest fault in one line across the window, until it is put away. */
final class FaultBar extends HBox {
    FaultBar(Messages messages, Faults faults) {
        getStyleClass().add("fault-bar");
        setId("fault-bar");
        setAlignment(Pos.CENTER_LEFT);
        Label sentence = new Label();
        sentence.setId("fault-sentence");
        sentence.setWrapText(true);
        sentence.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        Button close = new Button(messages.of("fault.close.button"));
        close.setMinWidth(USE_PREF_SIZE);
        close.getStyleClass().add("quiet");
        close.setOnAction(event -> faults.putAway());
        getChildren().addAll(new AlertSign(Alert.WATCH), sentence, close);
        faults.newestProperty().addListener((property, before, after) -> {
            sentence.setText(after == null ? "" : messages.fault(after));
            setVisible(after != null);
        });
        setVisible(faults.newestProperty().get() != null);
        managedProperty().bind(visibleProperty());
    }
}
