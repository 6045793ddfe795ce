package undercroft.app.shelf;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/** Carries whole crates to another place, all in one step that undo takes back. */
public final class CrateMoves {
    private final Workspace workspace;
    private final Clock clock;
    private final Messages messages;

    public CrateMoves(Workspace workspace, Clock clock, Messages messages) {
        this.workspace = workspace;
        this.clock = clock;
        this.messages = messages;
    }

    /** The lots with bottles left that stand in the crate. */
    public List<Lot> lots(ShelfPlan.Crate crate) {
        return lots(workspace.getCellar(), crate);
    }

    private static List<Lot> lots(Cellar cellar, ShelfPlan.Crate crate) {
        return cellar.batch(crate.batchId()).lots().stream()
                .filter(lot -> lot.left() > 0)
                .filter(lot -> place(lot).equals(crate.placeId()))
                .toList();
    }

    private static String place(Lot lot) {
        return lot.stays().get(lot.stays().size() - 1).placeId();
    }

    /** Moves all bottles of the crates that do not stand there already. */
    public void move(List<ShelfPlan.Crate> crates, String placeId) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
        List<ShelfPlan.Crate> moving = crates.stream()
                .filter(crate -> !crate.placeId().isEmpty() && !crate.placeId().equals(placeId))
                .toList();
        if (moving.isEmpty()) {
            return;
        }
        String place = workspace.getCellar().place(placeId).name();
        String what = moving.size() == 1
                ? messages.of("undo.crate.moved", moving.get(0).name(), place)
                : messages.of("undo.crates.moved", moving.size(), place);
        workspace.change(what, cellar -> moved(cellar, moving, placeId, now));
    }

    private static Cellar moved(Cellar cellar, List<ShelfPlan.Crate> moving, String placeId, Instant now) {
        Cellar changed = cellar;
        for (ShelfPlan.Crate crate : moving) {
            for (Lot lot : lots(cellar, crate)) {
                Batch batch = changed.batch(crate.batchId());
                changed = changed.withBatch(batch.withMove(
                        lot.id(), lot.left(), placeId, now, lot.stayAt(now).cover()));
            }
        }
        return changed;
    }
}
