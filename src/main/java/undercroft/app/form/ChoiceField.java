package undercroft.app.form;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import undercroft.catalogue.Listed;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** One of a list. */
public final class ChoiceField<T> extends Field<T> {
    private final List<T> choices;
    private final Function<? super T, String> words;
    private final ObjectProperty<T> chosen = new SimpleObjectProperty<>(this, "chosen");

    public ChoiceField(
            Messages messages, String id, String label, List<T> choices, Function<? super T, String> words, T initial) {
        super(messages, id, label);
        this.choices = List.copyOf(choices);
        this.words = words;
        chosen.set(initial);
        chosen.addListener((property, before, after) -> changed());
    }

    public static <T extends Listed> ChoiceField<T> of(
            Messages messages, String id, String label, List<T> choices, T initial) {
        return new ChoiceField<>(messages, id, label, choices, messages::name, initial);
    }

    public static <E extends Enum<E> & Listed> ChoiceField<E> of(
            Messages messages, String id, String label, Class<E> list, E initial) {
        return of(messages, id, label, List.of(list.getEnumConstants()), initial);
    }

    public List<T> choices() {
        return choices;
    }

    public String words(T choice) {
        return choice == null ? "" : words.apply(choice);
    }

    /** Null while nothing is chosen. */
    public ObjectProperty<T> chosenProperty() {
        return chosen;
    }

    @Override
    public T value() {
        if (chosen.get() == null) {
            throw new InvalidInput("", "form.fault.choose");
        }
        return chosen.get();
    }
}
