package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.bottling.Solution;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.form.FormGrid;

/** What to mix for cleaning and sanitising, and what has to lie ready. */
final class CleaningView {
    private CleaningView() {}

    static Node of(BottlingContext context, PlanForm form) {
        VBox left = new VBox(
                8, new FormGrid().fields(form.wash().fields()), new SheetView(context, form, CleaningView::supplies));
        return new Columns(left, new SheetView(context, form, CleaningView::solutions));
    }

    private static List<Node> supplies(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Labels.section(sheet.words().of("bottling.supplies.title")));
        sheet.supplies().forEach(what -> nodes.add(Labels.of(sheet.words().of("bottling.supplies.line", what))));
        return nodes;
    }

    private static List<Node> solutions(DaySheet sheet) {
        return List.of(
                solution(sheet, "bottling.clean.first", sheet.day().wash().cleaning()),
                solution(sheet, "bottling.clean.then", sheet.day().wash().sanitising()));
    }

    private static Node solution(DaySheet sheet, String key, Solution solution) {
        VBox box = new VBox(
                6,
                Labels.section(sheet.words().of(key)),
                Labels.of(sheet.words().messages().sentence(sheet.words().of(solution.words())), "solution"));
        if (!solution.fromLabel()) {
            box.getChildren().add(Labels.of(sheet.words().of("bottling.clean.basis", solution.basis()), "faint"));
        }
        box.getChildren().add(Labels.note(Alert.WATCH, String.join(" ", sheet.said(solution.cautions()))));
        return box;
    }
}
