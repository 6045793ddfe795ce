package undercroft.app.form.batch;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.session.change.TakeBottles;
import undercroft.wording.Messages;

/** Bottles opened, given away, broken or burst; an opened one may tell how lively it was. */
public final class DrawForm extends Form {
    private final Batch batch;
    private final Lot lot;
    private final NumberField count;
    private final ChoiceField<Draw.Fate> fate;
    private final ChoiceField<Optional<PerceivedCarbonation>> perceivedCarbonation;
    private final ChoiceField<Optional<String>> clarity;
    private final WordsField flavour;
    private final DateTimeField at;
    private final WordsField note;

    public DrawForm(Messages messages, Cellar cellar, Batch batch, Lot lot, Instant now) {
        super(messages, cellar);
        this.batch = batch;
        this.lot = lot;
        count = add(
                new NumberField(
                                messages(),
                                "draw-count",
                                messages().of("form.draw.count"),
                                Measure.BOTTLES,
                                units(),
                                1,
                                lot.left())
                        .starting(1),
                "count",
                "draws");
        count.hintProperty().set(messages().of("form.left.hint", lot.left()));
        fate = add(ChoiceField.of(
                messages(), "draw-fate", messages().of("form.draw.fate"), Draw.Fate.class, Draw.Fate.OPENED));
        List<Optional<PerceivedCarbonation>> grades = new ArrayList<>(List.of(Optional.empty()));
        Arrays.stream(PerceivedCarbonation.values()).map(Optional::of).forEach(grades::add);
        perceivedCarbonation = add(new ChoiceField<>(
                messages(),
                "draw-liveliness",
                messages().of("form.draw.liveliness"),
                grades,
                grade -> grade.map(messages()::name).orElseGet(() -> messages().of("form.draw.not-noted")),
                Optional.empty()));
        perceivedCarbonation.askWhen(fate.chosenProperty().isEqualTo(Draw.Fate.OPENED));
        List<Optional<String>> looks = List.of(
                Optional.empty(),
                Optional.of(messages().of("form.draw.clear")),
                Optional.of(messages().of("form.draw.hazy")),
                Optional.of(messages().of("form.draw.cloudy")));
        clarity = add(new ChoiceField<>(
                messages(),
                "draw-clarity",
                messages().of("form.draw.clarity"),
                looks,
                look -> look.orElseGet(() -> messages().of("form.draw.not-noted")),
                Optional.empty()));
        clarity.askWhen(fate.chosenProperty().isEqualTo(Draw.Fate.OPENED));
        flavour = add(new WordsField(messages(), "draw-flavour", messages().of("form.draw.flavour"), ""));
        flavour.askWhen(fate.chosenProperty().isEqualTo(Draw.Fate.OPENED));
        at = add(
                new DateTimeField(
                                messages(),
                                "draw-at",
                                messages().of("form.draw.at"),
                                cellar.zone(),
                                now.truncatedTo(ChronoUnit.MINUTES))
                        .happened(lot.stays().get(0).from(), now),
                "at");
        note = add(new WordsField(messages(), "draw-note", messages().of("form.draw.note"), ""), "note");
        begin();
    }

    public List<Field<?>> fields() {
        return List.of(count, fate, perceivedCarbonation, clarity, flavour, at, note);
    }

    @Override
    public String what() {
        return messages().of("undo.draw", count.count(), batch.name());
    }

    /** The note, after what was seen and tasted. */
    private String words() {
        List<String> words = new ArrayList<>();
        if (clarity.isAsked()) {
            clarity.value().ifPresent(words::add);
            words.add(flavour.value().strip());
        }
        words.add(note.value().strip());
        words.removeIf(String::isEmpty);
        return String.join("; ", words);
    }

    @Override
    public Cellar applyTo(Cellar current) {
        return new TakeBottles(
                        batch.id(),
                        lot.id(),
                        new Draw(at.value(), count.count(), fate.value(), words()),
                        perceivedCarbonation.isAsked() ? perceivedCarbonation.value() : Optional.empty())
                .applyTo(current);
    }
}
