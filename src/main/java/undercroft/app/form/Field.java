package undercroft.app.form;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableBooleanValue;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/**
 * One thing a form asks for. Its fault is worked out at every change, but shown only once the field was left or the form
 * was to be saved, so that nobody is told off in the middle of a word.
 */
public abstract sealed class Field<T>
        permits WordsField, NumberField, ChoiceField, BooleanField, DateTimeField, MonthDayField, DateField {
    private final Messages messages;
    private final String id;
    private final String label;
    private final StringProperty hint = new SimpleStringProperty(this, "hint", "");
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper(this, "fault", "");
    private final ReadOnlyBooleanWrapper asked = new ReadOnlyBooleanWrapper(this, "asked", true);
    private String found = "";
    private boolean shown;
    private Runnable onChange = () -> {};

    Field(Messages messages, String id, String label) {
        this.messages = messages;
        this.id = id;
        this.label = label;
    }

    /** The language of label, hint and fault. */
    public final Messages messages() {
        return messages;
    }

    /** Names the control. */
    public final String id() {
        return id;
    }

    /** What the field is called, with its unit. */
    public String label() {
        return label;
    }

    /** What the field is called, without unit. */
    public final String name() {
        return label;
    }

    /** What is typed or chosen; an {@link InvalidInput} when that is not possible. */
    public abstract T value();

    /** One quiet line under the field; may be empty. */
    public final StringProperty hintProperty() {
        return hint;
    }

    /** What is wrong, as one sentence; empty while nothing is, or while it is not yet time to say so. */
    public final ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    /** False while other answers make the field meaningless. */
    public final ReadOnlyBooleanProperty askedProperty() {
        return asked.getReadOnlyProperty();
    }

    public final boolean isAsked() {
        return asked.get();
    }

    /** From now on the fault is shown as soon as there is one. */
    public final void leave() {
        tidy();
        shown = true;
        fault.set(found);
    }

    public final void askWhen(ObservableBooleanValue condition) {
        asked.bind(condition);
    }

    public final void asked(boolean wanted) {
        asked.set(wanted);
    }

    /** Called when the field is left, for what is better written out then. */
    protected void tidy() {}

    final boolean isFaulty() {
        return !found.isEmpty();
    }

    final void setFault(String sentence) {
        found = sentence;
        fault.set(shown ? sentence : "");
    }

    final void setFault(InvalidInput thrown) {
        setFault(messages.sentence(messages.what(thrown)));
    }

    public final void listen(Runnable listener) {
        onChange = listener;
    }

    final void changed() {
        onChange.run();
    }
}
