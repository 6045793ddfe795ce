package undercroft.view.edit;

import java.time.Instant;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import undercroft.app.form.Field;
import undercroft.app.form.batch.BatchForm;
import undercroft.app.form.batch.LotForm;
import undercroft.app.form.batch.SugarDoseForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.view.kit.form.FormDialog;
import undercroft.view.kit.form.FormDialogs;
import undercroft.view.kit.form.FormGrid;
import undercroft.view.kit.form.RowsView;

/** Asks for a batch. */
final class BatchDialog {
    private BatchDialog() {}

    static FormDialog open(FormDialogs dialogs, Cellar cellar, Optional<Batch> before, Instant now) {
        BatchForm form = new BatchForm(dialogs.messages(), cellar, before, now);
        FormGrid first = new FormGrid()
                .field(form.name())
                .section(dialogs.messages().of("form.batch.section.beer"))
                .fields(form.beer().beerFields())
                .section(dialogs.messages().of("form.batch.section.yeast"))
                .fields(form.beer().yeastFields())
                .section(dialogs.messages().of("form.batch.section.priming"))
                .field(form.litres());
        FormGrid second = new FormGrid()
                .fields(form.primingFields())
                .section(dialogs.messages().of("form.batch.section.filling"))
                .fields(form.fillingFields());
        VBox content = new VBox(first, sugars(form), second, lots(form));
        content.getStyleClass().add("form-content");
        String title = before.map(batch -> dialogs.messages().of("form.batch.title.edit", batch.name()))
                .orElseGet(() -> dialogs.messages().of("form.batch.title.add"));
        FormDialog dialog = dialogs.open(title, form, content);
        before.ifPresent(batch -> dialogs.offerDeleting(
                dialog,
                "batch",
                batch.name(),
                dialogs.messages().of("undo.batch.deleted", batch.name()),
                current -> BatchForm.without(current, batch.id())));
        return dialog;
    }

    private static Node sugars(BatchForm form) {
        Button add = new Button(form.messages().of("form.sugar-dose.add"));
        add.setId("sugar-add");
        RowsView<SugarDoseForm> rows = new RowsView<>(
                form.sugars(),
                row -> new FormGrid().line(row.label(), row.sugar(), row.weight()),
                form.messages().of("form.sugar-dose.remove"),
                add);
        add.setOnAction(event -> focus(rows, form.addSugar().sugar()));
        return rows;
    }

    private static Node lots(BatchForm form) {
        Button add = new Button(form.messages().of("form.lot.add"));
        add.setId("lot-add");
        RowsView<LotForm> rows = new RowsView<>(
                form.lots(),
                row -> new FormGrid()
                        .line(form.messages().of("form.lot.make-line"), row.count(), row.bottle())
                        .line(row.fillingLabel(), row.colour(), row.fill())
                        .line(form.messages().of("form.lot.place-line"), row.place(), row.cover())
                        .field(row.worn()),
                form.messages().of("form.lot.remove"),
                add);
        add.setOnAction(event -> focus(rows, form.addLot().count()));
        return rows;
    }

    /** Once the new row is laid out. */
    private static void focus(Node rows, Field<?> field) {
        Platform.runLater(() -> {
            Node node = rows.lookup("#" + field.id());
            if (node != null) {
                node.requestFocus();
            }
        });
    }
}
