package undercroft.app.form;

import java.time.MonthDay;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A day of any year. */
public final class MonthDayField extends Field<MonthDay> {
    private final StringProperty text = new SimpleStringProperty(this, "text");

    public MonthDayField(String id, String label, MonthDay initial) {
        super(id, label);
        text.set(DateText.of(initial));
        text.addListener((property, before, after) -> changed());
    }

    public StringProperty textProperty() {
        return text;
    }

    @Override
    public MonthDay value() {
        return DateText.day(text.get());
    }
}
