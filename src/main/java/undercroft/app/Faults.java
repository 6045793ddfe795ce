package undercroft.app;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import undercroft.quantity.InvalidInput;

/** The newest fault a person should see, until it is put away, and the newest thing that went well. For the window's thread. */
public final class Faults {
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper(this, "news", "");
    private final ReadOnlyObjectWrapper<InvalidInput> newest = new ReadOnlyObjectWrapper<>(this, "newest");
    private Optional<Offer> offer = Optional.empty();

    /** What can be done about a fault with one click. */
    public record Offer(String words, Runnable act) {}

    /** What was done, in one sentence, for as long as it is news; empty while nothing is. */
    public ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    /** Tells that something was done. */
    public void tell(String sentence) {
        news.set("");
        news.set(sentence);
    }

    public void forgetNews() {
        news.set("");
    }

    /** Null while there is none. */
    public ReadOnlyObjectProperty<InvalidInput> newestProperty() {
        return newest.getReadOnlyProperty();
    }

    /** What can be done about the newest. */
    public Optional<Offer> offer() {
        return offer;
    }

    public void show(InvalidInput fault) {
        show(fault, Optional.empty());
    }

    public void show(InvalidInput fault, Offer way) {
        show(fault, Optional.of(way));
    }

    private void show(InvalidInput fault, Optional<Offer> way) {
        // The same fault once more, with another offer, is news too.
        newest.set(null);
        offer = way;
        newest.set(fault);
    }

    public void putAway() {
        newest.set(null);
        offer = Optional.empty();
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
