package undercroft.app.form.batch;

import java.util.Optional;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Cellar;
import undercroft.cellar.SugarDose;
import undercroft.wording.Messages;

/** One of the sugars a batch was primed with. */
public final class SugarDoseForm extends Group {
    private final ChoiceField<Sugar> sugar;
    private final NumberField weight;
    private final String symbol;

    SugarDoseForm(Messages messages, Cellar cellar, Optional<SugarDose> before, int number) {
        super(messages);
        String id = "sugar-" + number + "-";
        symbol = Measure.WEIGHT.symbol(cellar.settings().units());
        sugar = add(
                ChoiceField.of(
                        messages(),
                        id + "kind",
                        messages().of("form.sugar-dose.kind"),
                        cellar.sugars(),
                        before.map(dose -> cellar.sugar(dose.sugarId()))
                                .orElse(cellar.sugars().get(0))),
                "sugar");
        weight = add(
                new NumberField(
                        messages(),
                        id + "weight",
                        messages().of("form.sugar-dose.weight"),
                        Measure.WEIGHT,
                        cellar.settings().units(),
                        0,
                        20_000),
                "grams");
        before.ifPresent(dose -> weight.show(dose.grams()));
    }

    /** What both fields are called together, with the unit of the weight. */
    public String label() {
        return messages().of("form.sugar-dose.line", symbol);
    }

    public ChoiceField<Sugar> sugar() {
        return sugar;
    }

    public NumberField weight() {
        return weight;
    }

    SugarDose dose() {
        return new SugarDose(sugar.value().id(), weight.figure());
    }
}
