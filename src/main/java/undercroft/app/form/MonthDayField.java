package undercroft.app.form;

import java.time.MonthDay;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import undercroft.wording.Messages;

/** A day of any year. */
public final class MonthDayField extends Field<MonthDay> {
    private final DateText dates;
    private final StringProperty text = new SimpleStringProperty(this, "text");

    public MonthDayField(Messages messages, String id, String label, MonthDay initial) {
        super(messages, id, label);
        dates = new DateText(messages);
        text.set(dates.of(initial));
        text.addListener((property, before, after) -> changed());
    }

    public StringProperty textProperty() {
        return text;
    }

    @Override
    public MonthDay value() {
        return dates.day(text.get());
    }
}
