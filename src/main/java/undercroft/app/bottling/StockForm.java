package undercroft.app.bottling;

import java.util.Optional;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.FilledIn;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.BottleStock;
import undercroft.cellar.Cellar;
import undercroft.wording.Messages;

/** Empty bottles of one make, set out for a batch. */
public final class StockForm extends Group implements FilledIn {
    private final NumberField count;
    private final ChoiceField<BottleType> bottle;
    private final ChoiceField<GlassColour> colour;
    private final BooleanField worn;

    /** {@code number} tells the rows of a form apart. */
    StockForm(Messages messages, Cellar cellar, Optional<BottleStock> before, int number) {
        super(messages);
        String id = "stock-" + number + "-";
        BottleType make = before.map(stock -> cellar.bottleType(stock.bottleTypeId()))
                .orElse(cellar.bottleTypes().get(0));
        count = add(
                new NumberField(
                        messages(),
                        id + "count",
                        messages().of("form.stock.count"),
                        Measure.BOTTLES,
                        cellar.settings().units(),
                        0,
                        10_000),
                "available");
        count.optional();
        before.ifPresent(stock -> count.show(stock.available()));
        bottle = add(
                ChoiceField.of(messages(), id + "bottle", messages().of("form.lot.bottle"), cellar.bottleTypes(), make),
                "bottle");
        colour = add(
                ChoiceField.of(
                        messages(),
                        id + "colour",
                        messages().of("form.lot.colour"),
                        GlassColour.class,
                        before.map(BottleStock::colour).orElse(make.colour())),
                "colour");
        worn = add(new BooleanField(
                messages(),
                id + "worn",
                messages().of("form.lot.worn"),
                before.map(BottleStock::scuffed).orElse(false)));
        bottle.chosenProperty()
                .addListener((property, was, chosen) -> colour.chosenProperty().set(chosen.colour()));
    }

    public NumberField count() {
        return count;
    }

    public ChoiceField<BottleType> bottle() {
        return bottle;
    }

    public ChoiceField<GlassColour> colour() {
        return colour;
    }

    public BooleanField worn() {
        return worn;
    }

    @Override
    public boolean isFilledIn() {
        return count.value().isPresent();
    }

    BottleStock stock() {
        return new BottleStock(bottle.value().id(), colour.value(), worn.value(), count.count());
    }
}
