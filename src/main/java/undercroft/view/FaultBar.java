package undercroft.view;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import undercroft.app.Faults;
import undercroft.outlook.lot.Alert;
import undercroft.quantity.InvalidInput;
import undercroft.view.kit.AlertSign;
import undercroft.wording.Messages;

/** The newest fault in one line across the window, with what can be done about it, until it is put away. */
final class FaultBar extends HBox {
    private final Messages messages;
    private final Faults faults;
    private final Label sentence = new Label();
    private final Button act = new Button();

    FaultBar(Messages messages, Faults faults) {
        this.messages = messages;
        this.faults = faults;
        getStyleClass().add("fault-bar");
        setId("fault-bar");
        setAlignment(Pos.CENTER_LEFT);
        sentence.setId("fault-sentence");
        sentence.setWrapText(true);
        sentence.setMinHeight(USE_PREF_SIZE);
        sentence.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        act.setId("fault-act");
        act.setMinWidth(USE_PREF_SIZE);
        act.managedProperty().bind(act.visibleProperty());
        Button close = new Button(messages.of("fault.close.button"));
        close.setId("fault-close");
        close.setMinWidth(USE_PREF_SIZE);
        close.getStyleClass().add("quiet");
        close.setOnAction(event -> faults.putAway());
        getChildren().addAll(new AlertSign(Alert.WATCH), sentence, act, close);
        faults.newestProperty().addListener((property, before, after) -> fill(after));
        managedProperty().bind(visibleProperty());
        fill(faults.newestProperty().get());
    }

    private void fill(InvalidInput fault) {
        setVisible(fault != null);
        sentence.setText(fault == null ? "" : messages.fault(fault));
        act.setVisible(fault != null && faults.offer().isPresent());
        faults.offer().ifPresent(offer -> {
            act.setText(offer.words());
            act.setOnAction(event -> {
                faults.putAway();
                offer.act().run();
            });
        });
    }
}
