package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import undercroft.app.form.CappingForm;
import undercroft.outlook.lot.Alert;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.view.edit.FormGrid;
import undercroft.wording.Texts;

/** What was really done; then the batch goes to the shelf. */
final class CapScreen {
    private CapScreen() {}

    static Node of(BottlingContext bench) {
        return bench.model()
                .capping()
                .map(form -> of(bench, form))
                .orElseGet(() -> Words.note(Alert.WATCH, Texts.of("bottling.nothing-yet")));
    }

    private static Node of(BottlingContext bench, CappingForm form) {
        VBox left = new VBox(new FormGrid()
                .section(Texts.of("bottling.cap.counts"))
                .fields(form.counts())
                .section(Texts.of("bottling.screen.sugar"))
                .fields(form.sugarFields()));
        VBox differences = new VBox(5);
        differences.setId("differences");
        Button cap = new Button(Texts.of("bottling.cap.button"));
        cap.setId("cap");
        cap.getStyleClass().addAll("accent", "cap-button");
        cap.setOnAction(event -> {
            form.showFaults();
            if (form.canSave()) {
                try {
                    bench.model().cap(form);
                } catch (InvalidInput fault) {
                    form.showFault(fault);
                }
            }
        });
        Button labels = new Button(Texts.of("bottling.papers.save-labels"));
        labels.setId("labels-save");
        labels.setOnAction(event -> bench.model().papers().ifPresent(papers -> bench.papers()
                .save(
                        cap,
                        papers.fileName("labels"),
                        () -> papers.labels(bench.model().cellar(), form))));
        labels.disableProperty().bind(form.canSaveProperty().not());
        VBox right = new VBox(
                10,
                new FormGrid().section(Texts.of("bottling.cap.place")).fields(form.placeFields()),
                Words.section(Texts.of("bottling.cap.differences")),
                differences,
                new FormGrid().field(form.allTheSame()),
                FormGrid.fault(form.faultProperty()),
                new FlowPane(8, 8, cap, labels),
                bench.papers().answer());
        form.allFields().forEach(field -> field.faultProperty()
                .addListener((property, before, after) -> write(bench, form, differences)));
        form.changesProperty().addListener((property, before, after) -> write(bench, form, differences));
        write(bench, form, differences);
        return Words.columns(left, right);
    }

    private static void write(BottlingContext bench, CappingForm form, VBox differences) {
        List<Node> nodes = new ArrayList<>();
        try {
            List<Phrase> told = form.capping(bench.model().cellar()).differences();
            told.forEach(one -> nodes.add(Words.of(bench.model().words().of(one))));
            nodes.add(Words.of(Texts.of(told.isEmpty() ? "bottling.cap.as-planned" : "bottling.cap.noted"), "faint"));
        } catch (InvalidInput unreadable) {
            nodes.add(Words.of(Texts.of("bottling.cap.unreadable"), "faint"));
        }
        differences.getChildren().setAll(nodes);
    }
}
