package undercroft.view.bottling;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.GravityForm;
import undercroft.app.bottling.PlanForm;
import undercroft.view.kit.form.FormGrid;
import undercroft.view.kit.form.RowsView;

/** How much beer there is, and what sort. */
final class BeerView {
    private BeerView() {}

    static Node of(BottlingContext context, PlanForm form) {
        VBox left = new VBox(new FormGrid()
                .section(context.messages().of("bottling.beer.how-much"))
                .field(form.name())
                .fields(form.shares().fields())
                .field(form.wish().kegTarget())
                .wide(new SheetView(context, form, BeerView::shares))
                .section(context.messages().of("bottling.beer.what"))
                .fields(form.beer().strengthFields())
                .fields(form.beer().hopFields()));
        VBox right = new VBox(
                new FormGrid()
                        .section(context.messages().of("bottling.beer.gravity"))
                        .field(form.beer().finalGravity()),
                gravities(form),
                new FormGrid()
                        .section(context.messages().of("form.batch.section.yeast"))
                        .fields(form.beer().yeastFields()));
        return new Columns(left, right);
    }

    private static List<Node> shares(DaySheet sheet) {
        return List.of(Labels.of(sheet.shares(), "figure-line"));
    }

    /** Readings with their days. */
    static Node gravities(PlanForm form) {
        Button add = new Button(form.messages().of("bottling.beer.add-gravity"));
        add.setId("gravity-add");
        RowsView<GravityForm> rows = new RowsView<>(
                form.gravities(),
                row -> new FormGrid().line(form.messages().of("bottling.beer.reading"), row.gravity(), row.day()),
                form.messages().of("bottling.beer.remove-gravity"),
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
