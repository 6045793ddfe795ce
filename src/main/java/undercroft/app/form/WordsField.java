package undercroft.app.form;

import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Free words. */
public final class WordsField extends Field<String> {
    private boolean hasLines;
    private final StringProperty text = new SimpleStringProperty(this, "text");

    WordsField(String id, String label, String initial) {
        super(id, label);
        text.set(initial);
        text.addListener((property, before, after) -> changed());
    }

    /** For several lines. */
    WordsField lines() {
        hasLines = true;
        return this;
    }

    public boolean hasLines() {
        return hasLines;
    }

    public StringProperty textProperty() {
        return text;
    }

    @Override
    public String value() {
        return text.get();
    }
}
