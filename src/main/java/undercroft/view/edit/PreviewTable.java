package undercroft.view.edit;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import undercroft.app.form.place.ImportPreview;

/** The first lines of a file, cell by cell. */
final class PreviewTable extends GridPane {
    PreviewTable(ImportPreview preview) {
        getStyleClass().add("preview-table");
        setId("import-preview");
        int row = 0;
        if (!preview.header().isEmpty()) {
            add(preview.header(), row++, "preview-head");
        }
        for (List<String> cells : preview.rows()) {
            add(cells, row++, "preview-cell");
        }
    }

    private void add(List<String> cells, int row, String styleClass) {
        for (int i = 0; i < cells.size(); i++) {
            Label cell = new Label(cells.get(i));
            cell.getStyleClass().add(styleClass);
            add(cell, i, row);
        }
    }
}
