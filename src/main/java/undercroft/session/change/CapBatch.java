package undercroft.session.change;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Capping;
import undercroft.bottling.Elsewhere;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/**
 * A planned batch is capped and stands on the shelf; what was done otherwise than planned goes into its notes.
 *
 * @param elsewhere bottles that go to another place than the rest; none of a count of 0
 * @param allTheSame whether the user goes on though the plan says not to
 * @param now nothing can have been capped later than this
 */
public record CapBatch(
        String batchId,
        BottlingDay day,
        Capping.Done done,
        List<Elsewhere> elsewhere,
        boolean allTheSame,
        Instant now,
        Messages messages)
        implements CellarChange {
    public CapBatch {
        elsewhere = List.copyOf(elsewhere);
    }

    /** The batch as it will stand on the shelf, with what differs from the plan. */
    public Capping capping(Cellar cellar) {
        if (done.cappedAt().isAfter(now)) {
            throw new InvalidInput("cappedAt", "form.fault.to-come");
        }
        cellar.place(done.placeId());
        Capping whole = Capping.of(cellar.batch(batchId), day, done);
        Batch batch = whole.batch();
        for (int i = 0; i < elsewhere.size(); i++) {
            try {
                batch = elsewhere.get(i).count() == 0 ? batch : elsewhere.get(i).applyTo(batch);
            } catch (InvalidInput thrown) {
                throw thrown.at("elsewhere[" + i + "]." + thrown.where());
            }
        }
        return new Capping(batch, whole.differences());
    }

    @Override
    public Cellar applyTo(Cellar cellar) {
        Capping capping = capping(cellar);
        if (!day.mayGoOn() && !allTheSame) {
            throw new InvalidInput("may", "form.capping.must-say");
        }
        Batch capped = capping.batch();
        QuantityFormat words = QuantityFormat.of(messages, cellar.settings().units(), cellar.zone());
        String told = capping.differences().stream().map(words::of).collect(Collectors.joining(" "));
        return cellar.withBatch(
                told.isEmpty()
                        ? capped
                        : capped.withNotes((capped.notes() + "\n" + messages.of("form.capping.note", told)).strip()));
    }
}
