package undercroft.app.form;

import java.util.OptionalDouble;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;

/** A figure typed with or without its unit. */
public final class NumberField extends Field<OptionalDouble> {
    private final Measure measure;
    private final UnitSystem units;
    private final StringProperty text = new SimpleStringProperty(this, "text");
    private final double leastKept;
    private final double mostKept;
    private boolean mayBeEmpty;
    private double kept = Double.NaN;
    private String keptText;

    /** The bounds are those of the record the figure goes into, said here in the unit the person sees. */
    public NumberField(
            Messages messages,
            String id,
            String label,
            Measure measure,
            UnitSystem units,
            double leastKept,
            double mostKept) {
        super(messages, id, label);
        this.measure = measure;
        this.units = units;
        this.leastKept = leastKept;
        this.mostKept = mostKept;
        text.set("");
        text.addListener((property, before, after) -> changed());
    }

    public NumberField optional() {
        mayBeEmpty = true;
        return this;
    }

    public NumberField starting(double initial) {
        show(initial);
        return this;
    }

    public NumberField starting(OptionalDouble initial) {
        initial.ifPresent(this::show);
        return this;
    }

    /** Shows a figure; as long as its text stays, exactly this figure is kept, however it was rounded for showing. */
    public void show(double figure) {
        kept = figure;
        keptText = text(figure);
        text.set(keptText);
    }

    public StringProperty textProperty() {
        return text;
    }

    @Override
    public String label() {
        String symbol = measure.symbol(units);
        return symbol.isEmpty() ? name() : messages().of("form.label.unit", name(), symbol);
    }

    /** Empty only where nothing need be given. */
    @Override
    public OptionalDouble value() {
        String typed = text.get() == null ? "" : text.get().strip();
        if (typed.isEmpty() && mayBeEmpty) {
            return OptionalDouble.empty();
        }
        double figure = typed.equals(keptText) ? kept : measure.parse(typed, units);
        if (!(figure >= leastKept && figure <= mostKept)) {
            throw beyond(figure);
        }
        if (measure == Measure.BOTTLES && figure != Math.rint(figure)) {
            throw new InvalidInput("", "form.fault.whole", typed);
        }
        return OptionalDouble.of(figure);
    }

    private InvalidInput beyond(double figure) {
        String least = text(leastKept);
        if (measure == Measure.BOTTLES) {
            return figure < leastKept
                    ? new InvalidInput("", "form.fault.too-few", text(figure), least)
                    : new InvalidInput("", "form.fault.too-many", text(figure), text(mostKept));
        }
        return new InvalidInput("", "form.fault.range", textWithUnit(figure), least, textWithUnit(mostKept));
    }

    private String text(double figure) {
        return measure.text(figure, units, messages().locale());
    }

    private String textWithUnit(double figure) {
        return measure.textWithUnit(figure, units, messages().locale());
    }

    /** The figure where one must be given. */
    public double figure() {
        return value().orElseThrow(() -> new InvalidInput("", "form.fault.nothing"));
    }

    public int count() {
        return (int) figure();
    }
}
