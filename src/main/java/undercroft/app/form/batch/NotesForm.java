package undercroft.app.form.batch;

import undercroft.app.form.Form;
import undercroft.app.form.WordsField;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.wording.Messages;

/** Anything worth keeping about a batch. */
public final class NotesForm extends Form {
    private final Batch batch;
    private final WordsField notes;

    public NotesForm(Messages messages, Cellar cellar, Batch batch) {
        super(messages, cellar);
        this.batch = batch;
        notes = add(
                new WordsField(messages(), "batch-notes", messages().of("form.notes.notes"), batch.notes()).lines(),
                "notes");
        begin();
    }

    public WordsField notes() {
        return notes;
    }

    @Override
    public String what() {
        return messages().of("undo.notes.changed", batch.name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        return current.withBatch(
                current.batch(batch.id()).withNotes(notes.value().strip()));
    }
}
