package undercroft.app.form;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import undercroft.app.Texts;
import undercroft.catalogue.Liveliness;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;

/** Bottles opened, given away, broken or burst; an opened one may tell how lively it was. */
public final class DrawForm extends Form {
    private final Batch batch;
    private final Lot lot;
    private final NumberField count;
    private final ChoiceField<Draw.Fate> fate;
    private final ChoiceField<Optional<Liveliness>> liveliness;
    private final MomentField at;
    private final WordsField note;

    public DrawForm(Cellar cellar, Batch batch, Lot lot, Instant now) {
        super(cellar);
        this.batch = batch;
        this.lot = lot;
        count = add(
                new NumberField("draw-count", Texts.of("form.draw.count"), Measure.BOTTLES, units(), 1, lot.left())
                        .starting(1),
                "count",
                "draws");
        count.hintProperty().set(Texts.of("form.left.hint", lot.left()));
        fate = add(ChoiceField.of("draw-fate", Texts.of("form.draw.fate"), Draw.Fate.class, Draw.Fate.OPENED));
        List<Optional<Liveliness>> grades = new ArrayList<>(List.of(Optional.empty()));
        Arrays.stream(Liveliness.values()).map(Optional::of).forEach(grades::add);
        liveliness = add(new ChoiceField<>(
                "draw-liveliness",
                Texts.of("form.draw.liveliness"),
                grades,
                grade -> grade.map(Liveliness::label).orElseGet(() -> Texts.of("form.draw.not-noted")),
                Optional.empty()));
        liveliness.askWhen(fate.chosenProperty().isEqualTo(Draw.Fate.OPENED));
        at = add(
                new MomentField("draw-at", Texts.of("form.draw.at"), cellar.zone(), now.truncatedTo(ChronoUnit.MINUTES))
                        .happened(lot.stays().get(0).from(), now),
                "at");
        note = add(new WordsField("draw-note", Texts.of("form.draw.note"), ""), "note");
        begin();
    }

    public List<Field<?>> fields() {
        return List.of(count, fate, liveliness, at, note);
    }

    @Override
    public String what() {
        return Texts.counted("undo.draw", count.count(), batch.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        Instant when = at.value();
        Batch changed = current.batch(batch.id());
        changed = changed.withLot(
                changed.lot(lot.id()).withDraw(new Draw(when, count.count(), fate.value(), note.value())));
        if (liveliness.isAsked() && liveliness.value().isPresent()) {
            List<Reading> readings = new ArrayList<>(changed.readings());
            readings.add(new Reading.Opened(when, lot.id(), liveliness.value().get()));
            changed = changed.withReadings(readings);
        }
        return current.withBatch(changed);
    }
}
