package undercroft.app;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.quantity.InvalidInput;

/** The newest fault a person should see, until it is put away. For the window's thread. */
public final class Faults {
    private final ReadOnlyObjectWrapper<InvalidInput> newest = new ReadOnlyObjectWrapper<>(this, "newest");

    /** Null while there is none. */
    public ReadOnlyObjectProperty<InvalidInput> newestProperty() {
        return newest.getReadOnlyProperty();
    }

    public void show(InvalidInput fault) {
        newest.set(fault);
    }

    public void putAway() {
        newest.set(null);
    }

    /** Runs a step of the user's; a fault in it is shown and goes no further. */
    public void guard(Runnable step) {
        try {
            step.run();
        } catch (InvalidInput fault) {
            show(fault);
        }
    }
}
