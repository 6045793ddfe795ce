package undercroft.session.change;

import java.time.Instant;
import java.util.List;
import undercroft.catalogue.Cover;
import undercroft.cellar.Cellar;
import undercroft.cellar.Stay;
import undercroft.quantity.InvalidInput;

/** Some or all bottles of a lot go to another place or under another cover; a part becomes a lot of its own. */
public record MoveBottles(String batchId, String lotId, int count, String placeId, Instant at, Cover cover)
        implements CellarChange {
    @Override
    public Cellar applyTo(Cellar cellar) {
        List<Stay> stays = cellar.batch(batchId).lot(lotId).stays();
        Stay last = stays.get(stays.size() - 1);
        cellar.place(placeId);
        if (last.placeId().equals(placeId) && last.cover() == cover) {
            throw new InvalidInput("place", "form.move.nowhere");
        }
        if (!at.isAfter(last.from())) {
            throw new InvalidInput("at", "form.move.before-last");
        }
        return cellar.withBatch(cellar.batch(batchId).withMove(lotId, count, placeId, at, cover));
    }
}
