package undercroft.view.edit;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import undercroft.app.form.Field;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Cause;
import undercroft.view.kit.CautionView;
import undercroft.view.kit.form.FormGrid;
import undercroft.wording.Messages;

/** What the forms about bottles under pressure have in common: a word of caution above what is asked. */
final class LotDialogs {
    private LotDialogs() {}

    static Node content(
            Messages messages, Optional<CellarOutlook> outlook, String batchId, String lotId, List<Field<?>> fields) {
        FormGrid grid = new FormGrid().fields(fields);
        Alert alert =
                outlook.flatMap(known -> pressureAlert(known, batchId, lotId)).orElse(Alert.CLEAR);
        if (alert == Alert.CLEAR) {
            return grid;
        }
        VBox content = new VBox(new CautionView(messages, alert, cautions(messages, alert)), grid);
        content.getStyleClass().add("form-content");
        return content;
    }

    private static Optional<Alert> pressureAlert(CellarOutlook outlook, String batchId, String lotId) {
        return outlook.batches().stream()
                .filter(batch -> batch.id().equals(batchId))
                .flatMap(batch -> batch.lots().stream())
                .filter(lot -> lot.lot().id().equals(lotId))
                .map(lot -> lot.verdict().alert(Cause.Topic.PRESSURE))
                .findFirst();
    }

    private static List<String> cautions(Messages messages, Alert alert) {
        return List.of(
                messages.of(alert == Alert.ACT ? "batch.caution.act" : "batch.caution.watch"),
                messages.of("batch.caution.wear"),
                messages.of("batch.caution.rules"));
    }
}
