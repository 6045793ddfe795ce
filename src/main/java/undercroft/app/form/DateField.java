package undercroft.app.form;

import java.time.LocalDate;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** A day of a certain year. */
public final class DateField extends Field<LocalDate> {
    private final DateText dates;
    private final StringProperty text = new SimpleStringProperty(this, "text");

    public DateField(Messages messages, String id, String label, LocalDate initial) {
        super(messages, id, label);
        dates = new DateText(messages);
        text.set(dates.of(initial));
        text.addListener((property, before, after) -> changed());
    }

    public StringProperty textProperty() {
        return text;
    }

    /** Days later, or earlier; nothing when the date cannot be read. */
    public void stepDays(int days) {
        try {
            text.set(dates.of(value().plusDays(days)));
        } catch (InvalidInput unreadable) {
            leave();
        }
    }

    @Override
    public LocalDate value() {
        return dates.date(text.get());
    }
}
