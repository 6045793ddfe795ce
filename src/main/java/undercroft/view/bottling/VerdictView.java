package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.form.FormGrid;

/** Whether the fermentation is over. */
final class VerdictView {
    private VerdictView() {}

    static Node of(BottlingContext context, PlanForm form) {
        VBox left = new VBox(
                8,
                new FormGrid()
                        .section(context.messages().of("bottling.beer.gravity"))
                        .field(form.beer().finalGravity()),
                BeerView.gravities(form),
                Labels.of(context.messages().of("bottling.verdict.rule"), "faint"));
        return new Columns(left, new SheetView(context, form, VerdictView::verdict));
    }

    private static List<Node> verdict(DaySheet sheet) {
        DaySheet.Verdict verdict = sheet.verdict();
        Label word = Labels.of(verdict.word(), "verdict-word");
        word.setId("verdict-word");
        AlertSign sign = new AlertSign(verdict.alert());
        sign.getStyleClass().add("verdict-sign");
        HBox head = new HBox(20, sign, word);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox box = new VBox(8, head, Labels.of(verdict.reason(), "verdict-reason"));
        if (!verdict.stake().isEmpty()) {
            box.getChildren().add(Labels.of(verdict.stake(), "verdict-stake"));
        }
        String style = switch (verdict.alert()) {
            case CLEAR -> "alert-clear";
            case WATCH -> "alert-watch";
            case ACT -> "alert-act";
        };
        box.getStyleClass().addAll("verdict", "caution", style);
        List<Node> nodes = new ArrayList<>(List.of(box));
        sheet.said(sheet.day().refusals()).forEach(words -> nodes.add(Labels.note(Alert.ACT, words)));
        return nodes;
    }
}
