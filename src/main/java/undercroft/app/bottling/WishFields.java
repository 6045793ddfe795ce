package undercroft.app.bottling;

import javafx.beans.value.ObservableBooleanValue;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Cellar;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.UnitSystem;

/** The part of a plan that tells the carbonation wanted and the sugar for it. */
public final class WishFields {
    private static final double MOST_VOLUMES = 7;

    private final NumberField target;
    private final NumberField kegTarget;
    private final ChoiceField<Sugar> sugar;
    private final BooleanField perBottle;

    WishFields(Group form, Cellar cellar, FillingPlan.Wish before, ObservableBooleanValue hasKeg) {
        UnitSystem units = cellar.settings().units();
        target = form.add(
                new NumberField(
                                form.messages(),
                                "draft-target",
                                form.messages().of("form.plan.target"),
                                Measure.CARBONATION,
                                units,
                                0,
                                MOST_VOLUMES)
                        .starting(before.targetVolumes()),
                "targetVolumes",
                "target");
        kegTarget = form.add(
                new NumberField(
                                form.messages(),
                                "draft-keg-target",
                                form.messages().of("form.plan.keg-target"),
                                Measure.CARBONATION,
                                units,
                                0,
                                MOST_VOLUMES)
                        .optional()
                        .starting(before.kegTargetVolumes()),
                "kegTargetVolumes");
        sugar = form.add(
                ChoiceField.of(
                        form.messages(),
                        "draft-sugar",
                        form.messages().of("form.sugar-dose.kind"),
                        cellar.sugars(),
                        cellar.sugar(before.sugarId())),
                "sugar");
        perBottle = form.add(new BooleanField(
                form.messages(), "draft-per-bottle", form.messages().of("form.plan.per-bottle"), before.perBottle()));
        kegTarget.hintProperty().set(form.messages().of("form.plan.keg-target-hint"));
        perBottle.hintProperty().set(form.messages().of("form.plan.per-bottle-hint"));
        kegTarget.askWhen(hasKeg);
    }

    public NumberField target() {
        return target;
    }

    /** Puts a figure in as if it were typed. */
    public void aimAt(double volumes) {
        target.show(volumes);
    }

    public NumberField kegTarget() {
        return kegTarget;
    }

    public ChoiceField<Sugar> sugar() {
        return sugar;
    }

    public BooleanField perBottle() {
        return perBottle;
    }

    FillingPlan.Wish wish() {
        return new FillingPlan.Wish(
                target.figure(), kegTarget.value(), sugar.value().id(), perBottle.value());
    }
}
