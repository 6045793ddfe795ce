package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.app.bottling.StockForm;
import undercroft.bottling.FillOrder;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.form.FormGrid;
import undercroft.view.kit.form.RowsView;

/** Which bottles are filled. */
final class BottlesView {
    private BottlesView() {}

    static Node of(BottlingContext context, PlanForm form) {
        Button add = new Button(context.messages().of("form.lot.add"));
        add.setId("stock-add");
        RowsView<StockForm> rows = new RowsView<>(
                form.bottles(),
                row -> new FormGrid()
                        .line(context.messages().of("form.stock.count"), row.count(), row.bottle())
                        .line(context.messages().of("form.lot.colour"), row.colour())
                        .field(row.worn()),
                context.messages().of("form.lot.remove"),
                add);
        add.setOnAction(event -> {
            StockForm row = form.addBottles();
            Platform.runLater(() -> {
                Node node = rows.lookup("#" + row.count().id());
                if (node != null) {
                    node.requestFocus();
                }
            });
        });
        VBox left = new VBox(6, Labels.section(context.messages().of("bottling.bottles.set-out")), rows);
        return new Columns(left, new SheetView(context, form, BottlesView::filled));
    }

    private static List<Node> filled(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Labels.section(sheet.words().of("bottling.bottles.filled")));
        nodes.add(table(sheet));
        nodes.add(Labels.of(sheet.bottleSum(), "figure-line"));
        for (DaySheet.BottleLine line : sheet.bottles()) {
            if (!line.refusal().isEmpty()) {
                nodes.add(
                        Labels.note(Alert.ACT, sheet.words().of("bottling.refusal.row", line.name(), line.refusal())));
            }
        }
        nodes.add(Labels.sentences(sheet.said(sheet.day().order().notes())));
        nodes.add(Labels.section(sheet.words().of("bottling.bottles.height")));
        nodes.add(Labels.of(sheet.words().of(FillOrder.FILL_ADVICE)));
        return nodes;
    }

    private static Node table(DaySheet sheet) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("figure-grid");
        for (int width : new int[] {20, 38, 20, 22}) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(width);
            grid.getColumnConstraints().add(column);
        }
        grid.addRow(
                0,
                Labels.of(sheet.words().of("bottling.bottles.head.filled"), "faint"),
                Labels.of(sheet.words().of("form.lot.bottle"), "faint"),
                Labels.of(sheet.words().of("bottling.bottles.head.beer"), "faint"),
                Labels.of(sheet.words().of("bottling.bottles.head.headspace"), "faint"));
        for (DaySheet.BottleLine line : sheet.bottles()) {
            grid.addRow(
                    grid.getRowCount(),
                    Labels.of(line.filled(), "figure-line"),
                    Labels.of(line.name()),
                    Labels.of(line.beer()),
                    Labels.of(line.headspace()));
        }
        return grid;
    }
}
