package undercroft.view.kit.form;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Node;
import javafx.stage.Window;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/** Opens a form over the main window and saves it into the workspace. */
public final class FormDialogs {
    private final Messages messages;
    private final Workspace workspace;
    private final Supplier<Window> owner;
    private final ObservableBooleanValue dark;

    public FormDialogs(Messages messages, Workspace workspace, Supplier<Window> owner, ObservableBooleanValue dark) {
        this.messages = messages;
        this.workspace = workspace;
        this.owner = owner;
        this.dark = dark;
    }

    /** Shows what a form asks; saving closes it, a fault keeps it open with the sentence under its field. */
    public FormDialog open(String title, Form form, Node content) {
        return open(owner.get(), title, form, content, () -> workspace.change(form.what(), form::applyTo));
    }

    /** The same over another dialog, saved in a way of its own. */
    public FormDialog open(Window over, String title, Form form, Node content, Runnable saving) {
        FormDialog dialog = bare(over, title, content);
        dialog.below(FormGrid.fault(form.faultProperty()));
        dialog.askBeforeLeaving(() -> form.editsProperty().get() > 0);
        dialog.confirm(messages.of("form.button.save"), () -> save(form, dialog, saving));
        dialog.show(firstField(form, content));
        return dialog;
    }

    public FormDialog bare(Window over, String title, Node content) {
        return new FormDialog(messages, over, title, content, dark.get());
    }

    /** The language of the dialogs. */
    public Messages messages() {
        return messages;
    }

    public boolean isDark() {
        return dark.get();
    }

    public Window owner() {
        return owner.get();
    }

    private void save(Form form, FormDialog dialog, Runnable saving) {
        Optional<Field<?>> faulty = form.showFaults();
        if (!form.canSave()) {
            faulty.map(field -> dialog.stage().getScene().lookup("#" + field.id()))
                    .ifPresent(Node::requestFocus);
            return;
        }
        try {
            saving.run();
            dialog.close();
        } catch (InvalidInput fault) {
            form.showFault(fault);
        }
    }

    /** Adds a button that deletes what the dialog is about, once a person has said yes. */
    public void offerDeleting(
            FormDialog dialog, String idAndKey, String name, String undoWords, UnaryOperator<Cellar> without) {
        dialog.aside(idAndKey + "-delete", messages.of("form." + idAndKey + ".delete"), () -> {
            String sentence = messages.of("form." + idAndKey + ".delete.sentence", name);
            boolean may = false;
            try {
                may = !without.apply(workspace.getCellar()).equals(workspace.getCellar());
            } catch (InvalidInput fault) {
                sentence = messages.sentence(messages.what(fault));
            }
            Runnable delete = () -> {
                workspace.change(undoWords, without);
                dialog.close();
            };
            QuestionDialog.ask(
                    this,
                    dialog.stage(),
                    messages.of(may ? "form.question.title" : "form.question.refused"),
                    sentence,
                    may ? Optional.of(messages.of("form." + idAndKey + ".delete.button")) : Optional.empty(),
                    delete);
        });
    }

    private static Optional<Node> firstField(Form form, Node content) {
        return form.allFields().stream()
                .filter(Field::isAsked)
                .findFirst()
                .map(field -> content.lookup("#" + field.id()));
    }
}
