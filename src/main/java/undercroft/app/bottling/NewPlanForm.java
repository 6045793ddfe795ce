package undercroft.app.bottling;

import java.util.List;
import java.util.OptionalDouble;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Slug;
import undercroft.app.form.WordsField;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Yeast;
import undercroft.wording.Messages;

/** The least a bottling day can begin with; all else is asked on its pages. */
public final class NewPlanForm extends Form {
    private static final double USUAL_ABV = 5;
    private static final double USUAL_IBU = 25;
    private static final double USUAL_EBC = 15;
    private static final double USUAL_CELSIUS = 20;

    private final WordsField name;
    private final ChoiceField<BeerStyle> kind;
    private final NumberField litres;

    public NewPlanForm(Messages messages, Cellar cellar) {
        super(messages, cellar);
        name = add(
                new WordsField(messages(), "new-draft-name", messages().of("form.plan.name"), "").required(), "name");
        kind = add(ChoiceField.of(
                messages(), "new-draft-kind", messages().of("form.batch.kind"), BeerStyle.class, BeerStyle.PALE_ALE));
        litres = add(
                new NumberField(
                        messages(),
                        "new-draft-litres",
                        messages().of("form.plan.vessel"),
                        Measure.BEER,
                        units(),
                        0.1,
                        2_000),
                "vesselLitres");
        begin();
    }

    public List<Field<?>> fields() {
        return List.of(name, kind, litres);
    }

    @Override
    public String what() {
        return messages().of("undo.plan.started", name.value().strip());
    }

    /** The id that the plan gets in this cellar. */
    public String idIn(Cellar current) {
        return Slug.of(
                name.value(), "batch", current.batches().stream().map(Batch::id).toList());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        Beer beer = new Beer(
                kind.value(),
                USUAL_ABV,
                USUAL_IBU,
                0,
                USUAL_EBC,
                USUAL_CELSIUS,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Yeast yeast = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false);
        FillingPlan plan =
                FillingPlan.draft(litres.figure(), kind.value().targetVolumes().median());
        return current.withBatch(Batch.planned(idIn(current), name.value(), beer, yeast, plan));
    }
}
