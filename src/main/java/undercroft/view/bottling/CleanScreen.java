package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.form.DraftForm;
import undercroft.bottling.Solution;
import undercroft.outlook.lot.Alert;
import undercroft.view.edit.FormGrid;
import undercroft.wording.Texts;

/** What to mix for cleaning and sanitising, and what has to lie ready. */
final class CleanScreen {
    private CleanScreen() {}

    static Node of(BottlingContext bench, DraftForm form) {
        VBox left =
                new VBox(8, new FormGrid().fields(form.wash().fields()), new Live(bench, form, CleanScreen::supplies));
        return Words.columns(left, new Live(bench, form, CleanScreen::solutions));
    }

    private static List<Node> supplies(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(Words.section(Texts.of("bottling.supplies.title")));
        sheet.supplies().forEach(what -> nodes.add(Words.of(Texts.of("bottling.supplies.line", what))));
        return nodes;
    }

    private static List<Node> solutions(DaySheet sheet) {
        return List.of(
                solution(sheet, "bottling.clean.first", sheet.day().wash().cleaning(), ""),
                solution(
                        sheet,
                        "bottling.clean.then",
                        sheet.day().wash().sanitising(),
                        sheet.day().plan().filling().wash().sanitiser().basis()));
    }

    private static Node solution(DaySheet sheet, String key, Solution solution, String basis) {
        VBox box = new VBox(
                6,
                Words.section(Texts.of(key)),
                Words.of(sheet.words().messages().sentence(sheet.words().of(solution.words())), "solution"));
        if (!basis.isEmpty() && !solution.fromLabel()) {
            box.getChildren().add(Words.of(Texts.of("bottling.clean.basis", basis), "faint"));
        }
        box.getChildren().add(Words.note(Alert.WATCH, String.join(" ", sheet.said(solution.cautions()))));
        return box;
    }
}
