package undercroft.view.edit;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import undercroft.app.form.Field;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Destination;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.LotOutlook;
import undercroft.view.kit.CautionView;
import undercroft.view.kit.form.FormGrid;
import undercroft.wording.HandlingWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** What the forms about bottles under pressure have in common: a word of caution above what is asked. */
final class LotDialogs {
    private LotDialogs() {}

    static Node content(
            Messages messages, Optional<CellarOutlook> outlook, String batchId, String lotId, List<Field<?>> fields) {
        FormGrid grid = new FormGrid().fields(fields);
        Optional<LotOutlook> lot = outlook.flatMap(known -> lot(known, batchId, lotId));
        if (lot.isEmpty() || lot.get().verdict().danger() == Alert.CLEAR) {
            return grid;
        }
        ShelfWords words = ShelfWords.of(outlook.orElseThrow(), messages);
        List<String> cautions = new HandlingWords(words).cautions(lot.get());
        VBox content = new VBox(new CautionView(messages, lot.get().verdict().danger(), cautions), grid);
        content.getStyleClass().add("form-content");
        return content;
    }

    /** That a place may get too warm for a lot. */
    static Optional<String> warning(
            Messages messages, Optional<CellarOutlook> outlook, String batchId, String lotId, Place place) {
        return outlook.flatMap(known -> lot(known, batchId, lotId)
                .flatMap(lot -> new HandlingWords(ShelfWords.of(known, messages)).warmer(lot, place.id())));
    }

    /** Where a lot is best taken. */
    static Optional<Place> offered(Cellar cellar, Optional<CellarOutlook> outlook, String batchId, String lotId) {
        return outlook.flatMap(known -> lot(known, batchId, lotId).flatMap(known::offeredFor))
                .flatMap(there -> cellar.places().stream()
                        .filter(place -> place.id().equals(there.placeId()))
                        .findFirst());
    }

    static boolean wantsCover(Optional<CellarOutlook> outlook, String batchId, String lotId) {
        return outlook.flatMap(known -> lot(known, batchId, lotId))
                .filter(Destination::wantsCover)
                .isPresent();
    }

    private static Optional<LotOutlook> lot(CellarOutlook outlook, String batchId, String lotId) {
        return outlook.batches().stream()
                .filter(batch -> batch.id().equals(batchId))
                .flatMap(batch -> batch.lots().stream())
                .filter(lot -> lot.id().equals(lotId))
                .findFirst();
    }
}
