package undercroft.view.bottling;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.DraftForm;
import undercroft.app.bottling.GravityForm;
import undercroft.view.kit.form.FormGrid;
import undercroft.view.kit.form.RowsNode;
import undercroft.wording.Texts;

/** How much beer there is, and what sort. */
final class BeerScreen {
    private BeerScreen() {}

    static Node of(BottlingContext bench, DraftForm form) {
        VBox left = new VBox(new FormGrid()
                .section(Texts.of("bottling.beer.how-much"))
                .field(form.name())
                .fields(form.shares().fields())
                .field(form.wish().kegTarget())
                .wide(new Live(bench, form, BeerScreen::shares))
                .section(Texts.of("bottling.beer.what"))
                .fields(form.beer().strengthFields())
                .fields(form.beer().hopFields()));
        VBox right = new VBox(
                new FormGrid()
                        .section(Texts.of("bottling.beer.gravity"))
                        .field(form.beer().finalGravity()),
                gravities(form),
                new FormGrid()
                        .section(Texts.of("form.batch.section.yeast"))
                        .fields(form.beer().yeastFields()));
        return Words.columns(left, right);
    }

    private static List<Node> shares(DaySheet sheet) {
        return List.of(Words.of(sheet.shares(), "figure-line"));
    }

    /** Readings with their days. */
    static Node gravities(DraftForm form) {
        Button add = new Button(Texts.of("bottling.beer.add-gravity"));
        add.setId("gravity-add");
        RowsNode<GravityForm> rows = new RowsNode<>(
                form.gravities(),
                row -> new FormGrid().line(Texts.of("bottling.beer.reading"), row.gravity(), row.day()),
                Texts.of("bottling.beer.remove-gravity"),
                add);
        add.setOnAction(event -> {
            GravityForm row = form.addGravity();
            Platform.runLater(() -> {
                Node node = rows.lookup("#" + row.gravity().id());
                if (node != null) {
                    node.requestFocus();
                }
            });
        });
        return rows;
    }
}
