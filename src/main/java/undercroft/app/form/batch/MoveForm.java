package undercroft.app.form.batch;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.catalogue.Cover;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Stay;
import undercroft.session.change.MoveBottles;
import undercroft.wording.Messages;

/** Some or all bottles of a lot to another place or under another cover. */
public final class MoveForm extends Form {
    private final Batch batch;
    private final Lot lot;
    private final NumberField count;
    private final ChoiceField<Place> place;
    private final ChoiceField<Cover> cover;
    private final DateTimeField at;

    /**
     * A form for the bottles of a lot.
     *
     * @param offered the place that is chosen to begin with; empty for the next one
     * @param covered whether a closed box is chosen to begin with, instead of what they stand in
     * @param warning what is to be said of a place before the bottles go there; empty for nothing
     */
    public MoveForm(
            Messages messages,
            Cellar cellar,
            Batch batch,
            Lot lot,
            Instant now,
            Optional<Place> offered,
            boolean covered,
            Function<? super Place, Optional<String>> warning) {
        super(messages, cellar);
        this.batch = batch;
        this.lot = lot;
        Stay stay = lot.stays().get(lot.stays().size() - 1);
        count = add(
                new NumberField(
                                messages(),
                                "move-count",
                                messages().of("form.move.count"),
                                Measure.BOTTLES,
                                units(),
                                1,
                                lot.left())
                        .starting(lot.left()),
                "count");
        count.hintProperty().set(messages().of("form.left.hint", lot.left()));
        Place other = offered.or(() -> cellar.places().stream()
                        .filter(each -> !each.id().equals(stay.placeId()))
                        .findFirst())
                .orElse(cellar.place(stay.placeId()));
        place = add(
                ChoiceField.of(messages(), "move-place", messages().of("form.move.place"), cellar.places(), other),
                "place");
        String nowIn =
                messages().of("form.move.now-in", cellar.place(stay.placeId()).name(), stay.cover());
        place.hintProperty().set(warning.apply(other).orElse(nowIn));
        place.chosenProperty()
                .addListener((property, before, after) -> place.hintProperty()
                        .set(Optional.ofNullable(after).flatMap(warning).orElse(nowIn)));
        cover = add(ChoiceField.of(
                messages(),
                "move-cover",
                messages().of("form.move.cover"),
                Cover.class,
                covered ? Cover.CLOSED_BOX : stay.cover()));
        at = add(
                new DateTimeField(
                                messages(),
                                "move-at",
                                messages().of("form.move.at"),
                                cellar.zone(),
                                now.truncatedTo(ChronoUnit.MINUTES))
                        .happened(lot.stays().get(0).from(), now),
                "at",
                "stays");
        begin();
    }

    public List<Field<?>> fields() {
        return List.of(count, place, cover, at);
    }

    @Override
    public String what() {
        return messages().of("undo.move", count.count(), batch.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        return new MoveBottles(
                        batch.id(), lot.id(), count.count(), place.value().id(), at.value(), cover.value())
                .applyTo(current);
    }
}
