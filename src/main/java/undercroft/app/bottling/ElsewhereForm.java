package undercroft.app.bottling;

import java.util.List;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.FilledIn;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.bottling.Elsewhere;
import undercroft.bottling.FillRow;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.wording.Messages;

/** Some of the bottles of one kind that go to another place than the rest. */
public final class ElsewhereForm extends Group implements FilledIn {
    private final NumberField count;
    private final ChoiceField<FillRow> kind;
    private final ChoiceField<Place> place;

    /** {@code number} tells the rows of a form apart. */
    ElsewhereForm(Messages messages, Cellar cellar, List<FillRow> kinds, int number) {
        super(messages);
        String id = "elsewhere-" + number + "-";
        count = add(
                new NumberField(
                                messages,
                                id + "count",
                                messages.of("form.elsewhere.count"),
                                Measure.BOTTLES,
                                cellar.settings().units(),
                                0,
                                10_000)
                        .optional(),
                "count");
        kind = add(new ChoiceField<>(
                messages,
                id + "kind",
                messages.of("form.elsewhere.kind"),
                kinds,
                row -> messages.of(
                        "form.capping.count",
                        messages.name(row.bottle()),
                        messages.name(row.bottle().colour())),
                kinds.get(0)));
        kind.asked(kinds.size() > 1);
        List<Place> places = cellar.places();
        place = add(
                ChoiceField.of(
                        messages,
                        id + "place",
                        messages.of("form.elsewhere.place"),
                        places,
                        places.get(Math.min(number, places.size() - 1))),
                "place");
    }

    /** In order. */
    public List<Field<?>> fields() {
        return List.of(count, kind, place);
    }

    @Override
    public boolean isFilledIn() {
        return count.value().orElse(0) > 0;
    }

    /** The bottles and where they go. */
    Elsewhere elsewhere() {
        return new Elsewhere(
                isFilledIn() ? count.count() : 0,
                kind.value().bottle(),
                kind.value().scuffed(),
                place.value().id());
    }
}
