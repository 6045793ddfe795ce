package undercroft.app.form;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import undercroft.wording.Messages;

/** Yes or no. */
public final class BooleanField extends Field<Boolean> {
    private final BooleanProperty ticked = new SimpleBooleanProperty(this, "ticked");

    public BooleanField(Messages messages, String id, String label, boolean initial) {
        super(messages, id, label);
        ticked.set(initial);
        ticked.addListener((property, before, after) -> changed());
    }

    public BooleanProperty tickedProperty() {
        return ticked;
    }

    @Override
    public Boolean value() {
        return ticked.get();
    }
}
