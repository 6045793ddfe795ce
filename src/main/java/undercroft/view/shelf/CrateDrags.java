package undercroft.view.shelf;

import java.util.List;
import java.util.Optional;
import javafx.scene.SnapshotParameters;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;
import javafx.scene.paint.Color;
import undercroft.app.shelf.CrateMoves;
import undercroft.app.shelf.ShelfPlan;
import undercroft.app.shelf.ShelfViewModel;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.view.kit.WindowContext;

/** Crates taken from one place and dropped on another: one asks how many of its bottles go, several go as they are. */
final class CrateDrags {
    private final ShelfViewModel model;
    private final WindowContext context;
    private final ShelfBoard board;
    private final CrateMoves moves;
    private List<ShelfPlan.Crate> dragged = List.of();

    CrateDrags(ShelfViewModel model, WindowContext context, ShelfBoard board) {
        this.model = model;
        this.context = context;
        this.board = board;
        moves = new CrateMoves(context.workspace(), context.clock(), context.messages());
        board.setOnDragOver(this::over);
        board.setOnDragExited(event -> board.showDrop(Optional.empty()));
        board.setOnDragDropped(this::drop);
    }

    /** Lets a crate be dragged; one of those marked takes the others along. */
    void from(CrateView view) {
        view.setOnDragDetected(event -> {
            if (view.crate().placeId().isEmpty() || view.crate().left() == 0) {
                return;
            }
            boolean marked = model.markedProperty().get().contains(view.crate().key());
            dragged = marked ? model.markedCrates() : List.of(view.crate());
            Dragboard board = view.startDragAndDrop(TransferMode.MOVE);
            ClipboardContent content = new ClipboardContent();
            content.putString(view.crate().name());
            board.setContent(content);
            SnapshotParameters look = new SnapshotParameters();
            look.setFill(Color.TRANSPARENT);
            board.setDragView(view.snapshot(look, null));
            event.consume();
        });
        view.setOnDragDone(event -> dragged = List.of());
    }

    private Optional<String> target(DragEvent event) {
        return board.placeAt(event.getY())
                .filter(placeId ->
                        dragged.stream().anyMatch(crate -> !crate.placeId().equals(placeId)));
    }

    private void over(DragEvent event) {
        Optional<String> target = target(event);
        board.showDrop(target);
        if (target.isPresent()) {
            event.acceptTransferModes(TransferMode.MOVE);
        }
        event.consume();
    }

    private void drop(DragEvent event) {
        Optional<String> target = target(event);
        List<ShelfPlan.Crate> crates = dragged;
        board.showDrop(Optional.empty());
        event.setDropCompleted(target.isPresent());
        event.consume();
        target.ifPresent(placeId -> carry(crates, placeId));
    }

    /** Carries crates to a place; a lone lot is asked about first, since only some of its bottles may go. */
    void carry(List<ShelfPlan.Crate> crates, String placeId) {
        context.faults().guard(() -> {
            Cellar cellar = context.workspace().getCellar();
            List<Lot> lots =
                    crates.stream().flatMap(crate -> moves.lots(crate).stream()).toList();
            if (crates.size() == 1 && lots.size() == 1) {
                context.editors().moveTo(cellar.batch(crates.get(0).batchId()), lots.get(0), cellar.place(placeId));
            } else {
                moves.move(crates, placeId);
                model.unmarkAll();
            }
        });
    }
}
