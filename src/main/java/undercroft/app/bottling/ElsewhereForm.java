package undercroft.app.bottling;

import java.util.ArrayList;
import java.util.List;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.FilledIn;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.bottling.FillRow;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Stay;
import undercroft.quantity.InvalidInput;
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

    /** Takes its bottles out of their lot and puts them where they go, from capping on. */
    Batch applyTo(Batch capped) {
        Lot lot = capped.lots().stream()
                .filter(each -> each.bottleTypeId().equals(kind.value().bottle().id())
                        && each.colour() == kind.value().bottle().colour()
                        && each.scuffed() == kind.value().scuffed())
                .findFirst()
                .orElseThrow(() -> new InvalidInput("count", "form.elsewhere.none"));
        int going = count.count();
        if (going > lot.count()) {
            throw new InvalidInput("count", "form.elsewhere.too-many", lot.count());
        }
        Stay first = lot.stays().get(0);
        List<Stay> there = List.of(new Stay(place.value().id(), first.from(), first.cover()));
        List<Lot> lots = new ArrayList<>();
        for (Lot each : capped.lots()) {
            if (!each.id().equals(lot.id())) {
                lots.add(each);
            } else if (going == lot.count()) {
                lots.add(stays(lot, there));
            } else {
                lots.add(lot.without(going));
                lots.add(stays(lot.part(capped.freeLotId(lot.id()), going), there));
            }
        }
        return capped.withLots(lots);
    }

    private static Lot stays(Lot lot, List<Stay> stays) {
        return new Lot(
                lot.id(),
                lot.bottleTypeId(),
                lot.colour(),
                lot.count(),
                lot.fillMillilitres(),
                lot.scuffed(),
                stays,
                lot.draws());
    }
}
