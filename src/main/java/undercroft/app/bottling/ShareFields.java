package undercroft.app.bottling;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import undercroft.app.form.Field;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;

/** The part of a plan that tells where the beer goes. */
public final class ShareFields {
    private final NumberField vessel;
    private final NumberField loss;
    private final NumberField keg;

    ShareFields(Group form, UnitSystem units, FillingPlan.Shares before) {
        vessel = form.add(
                new NumberField(
                                form.messages(),
                                "draft-vessel",
                                form.messages().of("form.plan.vessel"),
                                Measure.BEER,
                                units,
                                0.1,
                                2_000)
                        .starting(before.vesselLitres()),
                "vesselLitres",
                "shares");
        loss = form.add(
                new NumberField(
                                form.messages(),
                                "draft-loss",
                                form.messages().of("form.plan.loss"),
                                Measure.BEER,
                                units,
                                0,
                                2_000)
                        .starting(before.lossLitres()),
                "lossLitres");
        keg = form.add(
                new NumberField(
                                form.messages(),
                                "draft-keg",
                                form.messages().of("form.plan.keg"),
                                Measure.BEER,
                                units,
                                0,
                                2_000)
                        .starting(before.kegLitres()),
                "kegLitres");
        loss.hintProperty().set(form.messages().of("form.plan.loss-hint"));
    }

    /** In order. */
    public List<Field<?>> fields() {
        return List.of(vessel, loss, keg);
    }

    BooleanBinding hasKeg() {
        return Bindings.createBooleanBinding(
                () -> {
                    try {
                        return keg.figure() > 0;
                    } catch (InvalidInput unreadable) {
                        return false;
                    }
                },
                keg.textProperty());
    }

    FillingPlan.Shares shares() {
        return new FillingPlan.Shares(vessel.figure(), loss.figure(), keg.figure());
    }
}
