package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.CappingForm;
import undercroft.app.bottling.DayPrintouts;
import undercroft.app.bottling.ElsewhereForm;
import undercroft.outlook.lot.Alert;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.report.sheet.CrateLabels;
import undercroft.view.kit.form.FormGrid;
import undercroft.view.kit.form.RowsView;
import undercroft.wording.Messages;

/** What was really done; then the batch goes to the shelf. */
final class CappingView {
    private CappingView() {}

    static Node of(BottlingContext context) {
        return context.model()
                .capping()
                .map(form -> of(context, form))
                .orElseGet(() -> Labels.note(Alert.WATCH, context.messages().of("bottling.nothing-yet")));
    }

    private static Node of(BottlingContext context, CappingForm form) {
        VBox left = new VBox(new FormGrid()
                .section(context.messages().of("bottling.cap.counts"))
                .fields(form.counts())
                .section(context.messages().of("bottling.screen.sugar"))
                .fields(form.sugarFields()));
        VBox differences = new VBox(5);
        differences.setId("differences");
        Button cap = new Button(context.messages().of("bottling.cap.button"));
        cap.setId("cap");
        cap.getStyleClass().addAll("accent", "cap-button");
        cap.setOnAction(event -> {
            form.showFaults();
            if (form.canSave()) {
                try {
                    context.model().cap(form);
                } catch (InvalidInput fault) {
                    form.showFault(fault);
                }
            }
        });
        Button labels = new Button(context.messages().of("bottling.papers.save-labels"));
        labels.setId("labels-save");
        labels.setOnAction(
                event -> context.model().printouts().ifPresent(printouts -> saveLabels(context, cap, printouts, form)));
        labels.disableProperty().bind(form.canSaveProperty().not());
        VBox right = new VBox(
                10,
                new FormGrid()
                        .section(context.messages().of("bottling.cap.place"))
                        .fields(form.placeFields()),
                split(context.messages(), form),
                Labels.section(context.messages().of("bottling.cap.differences")),
                differences,
                new FormGrid().field(form.allTheSame()),
                FormGrid.fault(form.faultProperty()),
                new FlowPane(8, 8, cap, labels),
                context.printouts().answer());
        form.allFields()
                .forEach(field -> field.faultProperty()
                        .addListener((property, before, after) -> write(context, form, differences)));
        form.changesProperty().addListener((property, before, after) -> write(context, form, differences));
        write(context, form, differences);
        return new Columns(left, right);
    }

    private static void saveLabels(BottlingContext context, Button cap, DayPrintouts printouts, CappingForm form) {
        context.printouts()
                .save(
                        cap,
                        printouts.fileName("labels"),
                        printouts.labels(context.model().cellar(), form),
                        CrateLabels.Sheets::page,
                        sheets -> context.model().labelled(sheets.printed()));
    }

    private static Node split(Messages messages, CappingForm form) {
        Button add = new Button(messages.of("bottling.cap.split"));
        add.setId("capping-split");
        add.setOnAction(event -> form.addElsewhere());
        RowsView<ElsewhereForm> rows = new RowsView<>(
                form.elsewhere(),
                row -> new FormGrid().fields(row.fields()),
                messages.of("bottling.cap.split.remove"),
                add);
        rows.setVisible(form.canSplit());
        rows.setManaged(form.canSplit());
        return rows;
    }

    private static void write(BottlingContext context, CappingForm form, VBox differences) {
        List<Node> nodes = new ArrayList<>();
        try {
            List<Phrase> told = form.capping(context.model().cellar()).differences();
            told.forEach(one -> nodes.add(Labels.of(context.model().words().of(one))));
            nodes.add(Labels.of(
                    context.messages().of(told.isEmpty() ? "bottling.cap.as-planned" : "bottling.cap.noted"), "faint"));
        } catch (InvalidInput unreadable) {
            nodes.add(Labels.of(context.messages().of("bottling.cap.unreadable"), "faint"));
        }
        differences.getChildren().setAll(nodes);
    }
}
