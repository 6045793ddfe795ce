package undercroft.app.form;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** Yes or no. */
public final class BooleanField extends Field<Boolean> {
    private final BooleanProperty ticked = new SimpleBooleanProperty(this, "ticked");

    public BooleanField(String id, String label, boolean initial) {
        super(id, label);
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
