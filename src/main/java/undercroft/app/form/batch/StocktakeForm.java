package undercroft.app.form.batch;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** What is left of a batch, as counted; what is missing leaves its lot as one entry. */
public final class StocktakeForm extends Form {
    private final Batch batch;
    private final Instant now;
    private final Map<Lot, NumberField> counts = new LinkedHashMap<>();
    private final ChoiceField<Draw.Fate> fate;

    public StocktakeForm(Cellar cellar, Batch batch, Instant now, Messages messages) {
        super(messages, cellar);
        this.batch = batch;
        this.now = now.truncatedTo(ChronoUnit.MINUTES);
        List<Lot> lots = batch.lots().stream().filter(lot -> lot.left() > 0).toList();
        for (int i = 0; i < lots.size(); i++) {
            Lot lot = lots.get(i);
            String place = cellar.place(lot.stays().get(lot.stays().size() - 1).placeId())
                    .name();
            String label =
                    messages.of("form.stocktake.count", messages.name(cellar.bottleType(lot.bottleTypeId())), place);
            NumberField count = add(
                    new NumberField(messages, "stocktake-count-" + i, label, Measure.BOTTLES, units(), 0, 10_000)
                            .starting(lot.left()),
                    "counts[" + i + "]");
            count.hintProperty().set(messages.of("form.stocktake.known", lot.left()));
            counts.put(lot, count);
        }
        fate = add(ChoiceField.of(
                messages, "stocktake-fate", messages.of("form.stocktake.fate"), Draw.Fate.class, Draw.Fate.OPENED));
        begin();
    }

    public List<Field<?>> fields() {
        List<Field<?>> fields = new ArrayList<>(counts.values());
        fields.add(fate);
        return fields;
    }

    @Override
    public String what() {
        return messages().of("undo.stocktake", batch.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        Batch counted = current.batch(batch.id());
        int i = 0;
        for (Map.Entry<Lot, NumberField> entry : counts.entrySet()) {
            Lot lot = counted.lot(entry.getKey().id());
            int missing = lot.left() - entry.getValue().count();
            if (missing < 0) {
                throw new InvalidInput("counts[" + i + "]", "form.stocktake.more", lot.left());
            }
            if (missing > 0) {
                Draw gone = new Draw(now, missing, fate.value(), messages().of("form.stocktake.note"));
                counted = counted.withLot(lot.withDraw(gone));
            }
            i++;
        }
        return current.withBatch(counted);
    }
}
