package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import undercroft.cellar.Batch;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Evidence;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/** The page of the batch chosen on the shelf. */
public final class BatchViewModel {
    private final Messages messages;
    private final Workspace workspace;
    private final ObservableValue<CellarOutlook> outlook;
    private final ObservableValue<ShelfPlan.Crate> crate;
    private final ReadOnlyObjectWrapper<BatchPage> page = new ReadOnlyObjectWrapper<>(this, "page");
    private String shownBatchId = "";
    private String lotId = "";

    public BatchViewModel(
            Messages messages,
            Workspace workspace,
            ObservableValue<CellarOutlook> outlook,
            ObservableValue<ShelfPlan.Crate> crate) {
        this.messages = messages;
        this.workspace = workspace;
        this.outlook = outlook;
        this.crate = crate;
        outlook.addListener((property, before, after) -> write());
        crate.addListener((property, before, after) -> {
            if (after != null && (before == null || !before.key().equals(after.key()))) {
                lotId = after.lotId();
            }
            write();
        });
        if (crate.getValue() != null) {
            lotId = crate.getValue().lotId();
        }
        write();
    }

    /** Null while nothing is chosen. */
    public ReadOnlyObjectProperty<BatchPage> pageProperty() {
        return page.getReadOnlyProperty();
    }

    public void chooseLot(String newLotId) {
        lotId = newLotId;
        write();
    }

    /** Takes a reading back; undoable. */
    public void remove(Reading reading) {
        workspace.change(
                messages.of(
                        "undo.reading.removed",
                        workspace.getCellar().batch(shownBatchId).name()),
                cellar -> {
                    Batch batch = cellar.batch(shownBatchId);
                    List<Reading> rest = new ArrayList<>(batch.readings());
                    rest.remove(reading);
                    return cellar.withBatch(batch.withReadings(rest));
                });
    }

    /** Takes back that bottles left; undoable. */
    public void remove(BatchPage.Drawn drawn) {
        workspace.change(
                messages.of(
                        "undo.draw.removed",
                        workspace.getCellar().batch(shownBatchId).name()),
                cellar -> {
                    Batch batch = cellar.batch(shownBatchId);
                    Lot lot = batch.lot(drawn.lotId());
                    List<Draw> rest = new ArrayList<>(lot.draws());
                    rest.remove(drawn.draw());
                    return cellar.withBatch(batch.withLot(lot.withDraws(rest)));
                });
    }

    /** Answers why bottles burst; undoable. */
    public void answer(Evidence.Burst burst, BurstCause cause) {
        workspace.change(
                messages.of(
                        "undo.burst.cause",
                        workspace.getCellar().batch(shownBatchId).name()),
                cellar -> {
                    Batch batch = cellar.batch(shownBatchId);
                    Lot lot = batch.lot(burst.lotId());
                    List<Draw> draws = lot.draws().stream()
                            .map(draw -> isOf(draw, burst) ? draw.withCause(cause) : draw)
                            .toList();
                    return cellar.withBatch(batch.withLot(lot.withDraws(draws)));
                });
    }

    private static boolean isOf(Draw draw, Evidence.Burst burst) {
        return draw.fate() == Draw.Fate.BURST
                && draw.at().equals(burst.at())
                && draw.count() == burst.bottles()
                && draw.cause().equals(burst.cause());
    }

    private void write() {
        CellarOutlook shown = outlook.getValue();
        ShelfPlan.Crate chosen = crate.getValue();
        if (shown == null || chosen == null) {
            page.set(null);
            return;
        }
        for (BatchOutlook batch : shown.batches()) {
            if (batch.id().equals(chosen.batchId())) {
                shownBatchId = batch.id();
                page.set(BatchPageWriter.page(shown, batch, lotId, messages));
            }
        }
    }
}
