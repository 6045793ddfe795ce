package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.form.FormGrid;

/** What to weigh. */
final class SugarView {
    private SugarView() {}

    static Node of(BottlingContext context, PlanForm form) {
        VBox left = new VBox(
                8,
                new FormGrid().field(form.wish().sugar()).field(form.wish().perBottle()),
                new SheetView(context, form, SugarView::notes));
        return new Columns(left, new SheetView(context, form, SugarView::figures));
    }

    private static List<Node> notes(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        if (!sheet.syrup().isEmpty()) {
            nodes.add(Labels.section(sheet.words().of("bottling.sugar.syrup-title")));
            nodes.add(Labels.of(sheet.syrup()));
            nodes.add(Labels.note(Alert.WATCH, sheet.words().of("bottling.caution.syrup")));
        }
        nodes.add(Labels.section(sheet.words().of("bottling.sugar.mind")));
        nodes.add(Labels.sentences(sheet.said(sheet.day().sugar().notes())));
        return nodes;
    }

    private static List<Node> figures(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        boolean none = sheet.needsNoSugar();
        Label weight = Labels.of(
                none
                        ? sheet.words().of("bottling.sugar.none")
                        : sheet.words().weighed(sheet.day().sugar().weighGrams()),
                "big-figure");
        weight.setId("sugar-weight");
        nodes.add(weight);
        nodes.add(Labels.figures(sheet.dose()));
        if (!none && !sheet.perBottle().isEmpty()) {
            nodes.add(Labels.section(sheet.words().of("bottling.sugar.each-title")));
            nodes.add(Labels.figures(sheet.perBottle()));
        }
        sheet.day().keg().ifPresent(keg -> {
            nodes.add(Labels.section(sheet.words().of("bottling.sugar.keg")));
            nodes.add(Labels.of(sheet.words().of(keg.words())));
        });
        return nodes;
    }
}
