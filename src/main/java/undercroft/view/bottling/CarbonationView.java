package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.outlook.lot.Alert;
import undercroft.quantity.Interval;
import undercroft.view.kit.form.FormGrid;

/** How lively the beer shall be, and what that does to the bottles. */
final class CarbonationView {
    private CarbonationView() {}

    static Node of(BottlingContext context, PlanForm form) {
        VBox top = new VBox(
                new FormGrid().field(form.wish().target()).field(form.wish().kegTarget()),
                new SheetView(context, form, sheet -> List.of(usual(form, sheet))));
        SheetView warnings = new SheetView(context, form, CarbonationView::warnings);
        SheetView picture = new SheetView(context, form, sheet -> picture(context, sheet));
        return new VBox(10, new Columns(top, warnings), picture);
    }

    private static Node usual(PlanForm form, DaySheet sheet) {
        Interval usual = sheet.day().usualTargetVolumes();
        FlowPane choices = new FlowPane(6, 6);
        choose(choices, form, sheet, "low", usual.low());
        choose(choices, form, sheet, "middle", usual.median());
        choose(choices, form, sheet, "high", usual.high());
        return new VBox(6, Labels.of(sheet.usualTarget(), "faint"), choices);
    }

    private static void choose(FlowPane choices, PlanForm form, DaySheet sheet, String id, double volumes) {
        Button button = new Button(
                sheet.words().of("bottling.target." + id, sheet.words().number(volumes, 1)));
        button.setId("target-" + id);
        button.setOnAction(event -> form.wish().aimAt(volumes));
        choices.getChildren().add(button);
    }

    private static List<Node> warnings(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        sheet.said(sheet.day().refusals()).forEach(words -> nodes.add(Labels.note(Alert.ACT, words)));
        if (sheet.needsNoSugar()) {
            sheet.said(sheet.day().sugar().notes()).forEach(words -> nodes.add(Labels.note(Alert.WATCH, words)));
        }
        if (!sheet.heatLimit().isEmpty()) {
            nodes.add(Labels.of(sheet.heatLimit(), "heat-limit"));
        }
        if (!sheet.highestTarget().isEmpty()) {
            nodes.add(Labels.of(sheet.highestTarget(), "faint"));
        }
        return nodes;
    }

    private static List<Node> picture(BottlingContext context, DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        sheet.picture().ifPresent(picture -> {
            nodes.add(Labels.section(context.messages().of("bottling.carbonation.picture")));
            nodes.add(new PressureView(picture, context.window().dark().get()));
        });
        if (sheet.pressures().size() > 1) {
            nodes.add(Labels.section(context.messages().of("bottling.carbonation.all")));
            nodes.add(table(sheet));
        }
        return nodes;
    }

    private static Node table(DaySheet sheet) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("figure-grid");
        for (int width : new int[] {37, 21, 21, 21}) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(width);
            grid.getColumnConstraints().add(column);
        }
        grid.addRow(
                0,
                Labels.of(sheet.words().of("form.lot.bottle"), "faint"),
                Labels.of(sheet.words().of("bottling.carbonation.head.hot", sheet.checkedAt()), "faint"),
                Labels.of(sheet.words().of("bottling.carbonation.head.limit"), "faint"),
                Labels.of(sheet.words().of("bottling.carbonation.head.highest"), "faint"));
        for (DaySheet.PressureLine line : sheet.pressures()) {
            grid.addRow(
                    grid.getRowCount(),
                    Labels.of(line.name()),
                    Labels.of(line.upperEstimate(), line.over() ? "too-much" : "figure-line"),
                    Labels.of(line.limit()),
                    Labels.of(line.highestTarget()));
        }
        return grid;
    }
}
