package undercroft.app.bottling;

import java.util.List;
import javafx.beans.binding.Bindings;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Sanitiser;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.UnitSystem;

/** The part of a plan that tells what to clean and sanitise with. */
public final class WashFields {
    private final ChoiceField<Cleaner> cleaner;
    private final NumberField cleanerRate;
    private final ChoiceField<Sanitiser> sanitiser;
    private final NumberField sanitiserRate;

    WashFields(Group form, UnitSystem units, FillingPlan.Wash before) {
        cleaner = form.add(ChoiceField.of(
                form.messages(),
                "draft-cleaner",
                form.messages().of("form.plan.cleaner"),
                Cleaner.class,
                before.cleaner()));
        cleanerRate = form.add(
                new NumberField(
                                form.messages(),
                                "draft-cleaner-rate",
                                form.messages().of("form.plan.rate"),
                                Measure.SOLID_RATE,
                                units,
                                0.1,
                                200)
                        .optional()
                        .starting(before.cleanerGramsPerLitre()),
                "cleanerGramsPerLitre");
        sanitiser = form.add(ChoiceField.of(
                form.messages(),
                "draft-sanitiser",
                form.messages().of("form.plan.sanitiser"),
                Sanitiser.class,
                before.sanitiser()));
        sanitiserRate = form.add(
                new NumberField(
                                form.messages(),
                                "draft-sanitiser-rate",
                                form.messages().of("form.plan.rate"),
                                Measure.LIQUID_RATE,
                                units,
                                0.05,
                                100)
                        .optional()
                        .starting(before.sanitiserMillilitresPerLitre()),
                "sanitiserMillilitresPerLitre");
        cleanerRate.hintProperty().set(form.messages().of("form.plan.rate-hint"));
        sanitiserRate.hintProperty().set(form.messages().of("form.plan.rate-hint"));
        cleanerRate.askWhen(Bindings.createBooleanBinding(
                () -> cleaner.value().usualGramsPerLitre().isPresent(), cleaner.chosenProperty()));
        sanitiserRate.askWhen(Bindings.createBooleanBinding(
                () -> sanitiser.value().usualMillilitresPerLitre().isPresent(), sanitiser.chosenProperty()));
    }

    /** In order. */
    public List<Field<?>> fields() {
        return List.of(cleaner, cleanerRate, sanitiser, sanitiserRate);
    }

    FillingPlan.Wash wash() {
        return new FillingPlan.Wash(sanitiser.value(), sanitiserRate.value(), cleaner.value(), cleanerRate.value());
    }
}
