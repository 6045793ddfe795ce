package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.form.DraftForm;
import undercroft.outlook.lot.Alert;
import undercroft.view.edit.FormGrid;
import undercroft.view.kit.AlertSign;
import undercroft.wording.Texts;

/** Whether the fermentation is over. */
final class VerdictScreen {
    private VerdictScreen() {}

    static Node of(BottlingContext bench, DraftForm form) {
        VBox left = new VBox(
                8,
                new FormGrid()
                        .section(Texts.of("bottling.beer.gravity"))
                        .field(form.beer().finalGravity()),
                BeerScreen.gravities(form),
                Words.of(Texts.of("bottling.verdict.rule"), "faint"));
        return Words.columns(left, new Live(bench, form, VerdictScreen::verdict));
    }

    private static List<Node> verdict(DaySheet sheet) {
        DaySheet.Verdict verdict = sheet.verdict();
        Label word = Words.of(verdict.word(), "verdict-word");
        word.setId("verdict-word");
        AlertSign sign = new AlertSign(verdict.alert());
        sign.getStyleClass().add("verdict-sign");
        HBox head = new HBox(20, sign, word);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox box = new VBox(8, head, Words.of(verdict.reason(), "verdict-reason"));
        if (!verdict.stake().isEmpty()) {
            box.getChildren().add(Words.of(verdict.stake(), "verdict-stake"));
        }
        String style =
                switch (verdict.alert()) {
                    case CLEAR -> "alert-clear";
                    case WATCH -> "alert-watch";
                    case ACT -> "alert-act";
                };
        box.getStyleClass().addAll("verdict", "caution", style);
        List<Node> nodes = new ArrayList<>(List.of(box));
        sheet.said(sheet.day().refusals()).forEach(words -> nodes.add(Words.note(Alert.ACT, words)));
        return nodes;
    }
}
