package undercroft.app.form;

import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import undercroft.quantity.Check;
import undercroft.wording.Messages;

/** Free words. */
public final class WordsField extends Field<String> {
    private boolean hasLines;
    private boolean isHidden;
    private boolean isRequired;
    private final StringProperty text = new SimpleStringProperty(this, "text");

    public WordsField(Messages messages, String id, String label, String initial) {
        super(messages, id, label);
        text.set(initial);
        text.addListener((property, before, after) -> changed());
    }

    /** Something must be given. */
    public WordsField required() {
        isRequired = true;
        return this;
    }

    /** For several lines. */
    public WordsField lines() {
        hasLines = true;
        return this;
    }

    /** Not to be read over a shoulder. */
    public WordsField hidden() {
        isHidden = true;
        return this;
    }

    public boolean isHidden() {
        return isHidden;
    }

    public boolean hasLines() {
        return hasLines;
    }

    public StringProperty textProperty() {
        return text;
    }

    @Override
    public String value() {
        return isRequired ? Check.text("", text.get()) : text.get();
    }
}
