package undercroft.view.kit;

import java.util.function.Function;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Scene;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.StackPane;
import javafx.stage.Modality;
import javafx.stage.Stage;
import undercroft.plot.PlotTable;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/** The plots as a table, row by row what the cursor would read off them. */
final class PlotTableDialog {
    private static final double TIME_WIDTH = 170;
    private static final double VALUE_WIDTH = 210;
    private static final double HEIGHT = 460;

    private PlotTableDialog() {}

    static Stage show(PlotsView plots, boolean dark, Messages messages, String title) {
        PlotTable table = PlotTable.of(plots.shown());
        TableView<PlotTable.Row> view = new TableView<>();
        view.setId("plot-table-view");
        view.setAccessibleText(title);
        view.getColumns()
                .add(column(messages.of("plots.table.time"), TIME_WIDTH, row -> plots.dateWords(row.epochSecond())));
        for (int i = 0; i < table.titles().size(); i++) {
            int at = i;
            view.getColumns()
                    .add(column(
                            table.titles().get(i),
                            VALUE_WIDTH,
                            row -> row.values().get(at).text()));
        }
        view.getItems().setAll(table.rows());
        Stage stage = new Stage();
        stage.initOwner(plots.getScene().getWindow());
        stage.initModality(Modality.WINDOW_MODAL);
        stage.setTitle(title);
        StackPane root = new StackPane(view);
        Scene scene = new Scene(
                root, TIME_WIDTH + VALUE_WIDTH * Math.min(4, table.titles().size()) + 24, HEIGHT);
        Looks.dress(scene, dark);
        scene.setOnKeyPressed(event -> {
            if (Shortcut.CLOSE.matches(event)) {
                stage.close();
            }
        });
        stage.setScene(scene);
        stage.show();
        return stage;
    }

    private static TableColumn<PlotTable.Row, String> column(
            String title, double width, Function<PlotTable.Row, String> words) {
        TableColumn<PlotTable.Row, String> column = new TableColumn<>(title);
        column.setPrefWidth(width);
        column.setSortable(false);
        column.setCellValueFactory(cell -> new SimpleStringProperty(words.apply(cell.getValue())));
        return column;
    }
}
