package undercroft.app.bottling;

import java.time.LocalDate;
import java.util.Optional;
import undercroft.app.form.DateField;
import undercroft.app.form.FilledIn;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.cellar.DatedGravity;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;

/** A gravity read before bottling. */
public final class GravityForm extends Group implements FilledIn {
    private final DateField day;
    private final NumberField gravity;
    private final boolean includesPriming;

    /** {@code number} tells the rows of a form apart. */
    GravityForm(Messages messages, UnitSystem units, Optional<DatedGravity> before, LocalDate today, int number) {
        super(messages);
        String id = "gravity-" + number + "-";
        day = add(
                new DateField(
                        messages(),
                        id + "day",
                        messages().of("form.gravity.day"),
                        before.map(DatedGravity::day).orElse(today)),
                "day");
        gravity = add(
                new NumberField(
                        messages(),
                        id + "figure",
                        messages().of("form.gravity.figure"),
                        Measure.GRAVITY,
                        units,
                        0.980,
                        1.200),
                "specificGravity");
        gravity.optional();
        includesPriming = before.map(DatedGravity::includesPriming).orElse(false);
        before.ifPresent(read -> gravity.show(read.specificGravity()));
    }

    public DateField day() {
        return day;
    }

    public NumberField gravity() {
        return gravity;
    }

    @Override
    public boolean isFilledIn() {
        return gravity.value().isPresent();
    }

    DatedGravity read() {
        return new DatedGravity(day.value(), gravity.figure(), includesPriming);
    }
}
