package undercroft.app.form;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/**
 * What one dialog asks for. The cellar's own checks decide what may be saved: at every change the form makes the cellar
 * it would save and puts what those checks say under the field it is about.
 */
public abstract class Form extends Group {
    private final Cellar cellar;
    private final ReadOnlyBooleanWrapper canSave = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper("");
    private final ReadOnlyIntegerWrapper edits = new ReadOnlyIntegerWrapper();
    private String found = "";
    private boolean shown;

    protected Form(Messages messages, Cellar cellar) {
        super(messages);
        this.cellar = cellar;
    }

    /** What saving does, in words that undo repeats. */
    public abstract String what();

    /** The cellar with what was told; an {@link InvalidInput} when it cannot be. */
    public abstract Cellar applyTo(Cellar current);

    /** Called after a change that may be saved, for what should be said beyond that. */
    protected void checked() {}

    /** Starts watching the fields; last step of making a form. */
    protected final void begin() {
        listen(() -> {
            check();
            edits.set(edits.get() + 1);
        });
        check();
    }

    /** How often anything was typed or chosen since the form was made; 0 while it is as it began. */
    public final ReadOnlyIntegerProperty editsProperty() {
        return edits.getReadOnlyProperty();
    }

    protected final UnitSystem units() {
        return cellar.settings().units();
    }

    protected final Cellar cellar() {
        return cellar;
    }

    public final ReadOnlyBooleanProperty canSaveProperty() {
        return canSave.getReadOnlyProperty();
    }

    public final boolean canSave() {
        return canSave.get();
    }

    /** A fault that belongs to no single field; empty while there is none. */
    public final ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    /** Shows every fault there is, and the first faulty field. */
    public final Optional<Field<?>> showFaults() {
        shown = true;
        fault.set(found);
        allFields().forEach(Field::leave);
        return allFields().stream().filter(Field::isFaulty).findFirst();
    }

    /** Puts a fault where it belongs. */
    public final void showFault(InvalidInput thrown) {
        place(thrown);
        canSave.set(false);
        showFaults();
    }

    private void check() {
        List<Field<?>> fields = allFields();
        setFault("");
        boolean faulty = false;
        for (Field<?> field : fields) {
            field.setFault("");
            if (field.isAsked()) {
                try {
                    read(field);
                } catch (InvalidInput thrown) {
                    field.setFault(thrown);
                    faulty = true;
                }
            }
        }
        if (!faulty) {
            try {
                applyTo(cellar);
            } catch (InvalidInput thrown) {
                place(thrown);
                faulty = true;
            }
        }
        canSave.set(!faulty);
        if (!faulty) {
            checked();
        }
    }

    private static void read(Field<?> field) {
        field.value();
    }

    protected final void place(InvalidInput fault) {
        InvalidInput thrown =
                QuantityFormat.of(messages(), units(), cellar.zone()).worded(fault);
        String where = thrown.where().replaceFirst("^(places|batches|servings)\\[\\d+]\\.?", "");
        Optional<Field<?>> field = at(where).filter(Field::isAsked);
        if (field.isPresent()) {
            field.get().setFault(thrown);
        } else {
            setFault(messages().sentence(messages().fault(thrown.at(where.isEmpty() ? "" : thrown.where()))));
        }
    }

    private void setFault(String sentence) {
        found = sentence;
        fault.set(shown ? sentence : "");
    }
}
