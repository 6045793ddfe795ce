package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.form.DraftForm;
import undercroft.outlook.lot.Alert;
import undercroft.view.edit.FormGrid;
import undercroft.wording.Texts;

/** What to weigh. */
final class SugarScreen {
    private SugarScreen() {}

    static Node of(BottlingContext bench, DraftForm form) {
        VBox left = new VBox(
                8,
                new FormGrid().field(form.wish().sugar()).field(form.wish().perBottle()),
                new Live(bench, form, SugarScreen::notes));
        return Words.columns(left, new Live(bench, form, SugarScreen::figures));
    }

    private static List<Node> notes(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        if (!sheet.syrup().isEmpty()) {
            nodes.add(Words.section(Texts.of("bottling.sugar.syrup-title")));
            nodes.add(Words.of(sheet.syrup()));
            nodes.add(Words.note(Alert.WATCH, Texts.of("bottling.caution.syrup")));
        }
        nodes.add(Words.section(Texts.of("bottling.sugar.mind")));
        nodes.add(Words.sentences(sheet.said(sheet.day().sugar().notes())));
        return nodes;
    }

    private static List<Node> figures(DaySheet sheet) {
        List<Node> nodes = new ArrayList<>();
        boolean none = sheet.needsNoSugar();
        Label weight = Words.of(
                none
                        ? Texts.of("bottling.sugar.none")
                        : sheet.words().weighed(sheet.day().sugar().weighGrams()),
                "big-figure");
        weight.setId("sugar-weight");
        nodes.add(weight);
        nodes.add(Words.figures(sheet.dose()));
        if (!none && !sheet.perBottle().isEmpty()) {
            nodes.add(Words.section(Texts.of("bottling.sugar.each-title")));
            nodes.add(Words.figures(sheet.perBottle()));
        }
        sheet.day().keg().ifPresent(keg -> {
            nodes.add(Words.section(Texts.of("bottling.sugar.keg")));
            nodes.add(Words.of(sheet.words().of(keg.words())));
        });
        return nodes;
    }
}
