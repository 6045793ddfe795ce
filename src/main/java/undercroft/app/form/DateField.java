package undercroft.app.form;

import java.time.LocalDate;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import undercroft.quantity.InvalidInput;

/** A day of a certain year. */
public final class DateField extends Field<LocalDate> {
    private final StringProperty text = new SimpleStringProperty(this, "text");

    public DateField(String id, String label, LocalDate initial) {
        super(id, label);
        text.set(DateText.of(initial));
        text.addListener((property, before, after) -> changed());
    }

    public StringProperty textProperty() {
        return text;
    }

    /** Days later, or earlier; nothing when the date cannot be read. */
    public void stepDays(int days) {
        try {
            text.set(DateText.of(value().plusDays(days)));
        } catch (InvalidInput unreadable) {
            leave();
        }
    }

    @Override
    public LocalDate value() {
        return DateText.date(text.get());
    }
}
