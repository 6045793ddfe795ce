package undercroft.app.form;

import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Free words. */
public final class WordsField extends Field<String> {
    private final StringProperty text = new SimpleStringProperty(this, "text");

    WordsField(String id, String label, String initial) {
        super(id, label);
        text.set(initial);
        text.addListener((property, before, after) -> changed());
    }

    public StringProperty textProperty() {
        return text;
    }

    @Override
    public String value() {
        return text.get();
    }
}
