package undercroft.app.evidence;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.quantity.InvalidInput;
import undercroft.session.Forecasts;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** The evidence of one batch; worked out when somebody looks at it, and anew when the cellar changes meanwhile. */
public final class EvidenceViewModel {
    private final Forecasts forecasts;
    private final Messages messages;
    private final ReadOnlyStringWrapper batchId = new ReadOnlyStringWrapper(this, "batchId", "");
    private final ReadOnlyObjectWrapper<EvidencePage> page = new ReadOnlyObjectWrapper<>(this, "page");
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper(this, "fault", "");

    public EvidenceViewModel(Forecasts forecasts, Messages messages) {
        this.forecasts = forecasts;
        this.messages = messages;
        forecasts.outlookProperty().addListener((property, before, after) -> explain());
    }

    /** The batch looked at; empty while none is. */
    public ReadOnlyStringProperty batchIdProperty() {
        return batchId.getReadOnlyProperty();
    }

    /** Null until it is worked out. */
    public ReadOnlyObjectProperty<EvidencePage> pageProperty() {
        return page.getReadOnlyProperty();
    }

    /** Why it cannot be worked out; empty otherwise. */
    public ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    public void show(String id) {
        page.set(null);
        batchId.set(id);
        explain();
    }

    public void stop() {
        batchId.set("");
        page.set(null);
    }

    private Optional<BatchOutlook> batch(CellarOutlook outlook) {
        return outlook.batches().stream()
                .filter(batch -> batch.id().equals(batchId.get()) && batch.isCapped())
                .findFirst();
    }

    private void explain() {
        CellarOutlook outlook = forecasts.outlookProperty().get();
        if (batchId.get().isEmpty() || outlook == null) {
            return;
        }
        if (batch(outlook).isEmpty()) {
            stop();
            return;
        }
        fault.set("");
        forecasts.explain(batchId.get(), course -> write(outlook, course), this::failed);
    }

    private void write(CellarOutlook outlook, EvidenceCourse course) {
        batch(outlook).ifPresent(batch -> page.set(EvidencePage.of(batch, course, ShelfWords.of(outlook, messages))));
    }

    private void failed(InvalidInput thrown) {
        fault.set(messages.sentence(messages.fault(thrown)));
    }
}
