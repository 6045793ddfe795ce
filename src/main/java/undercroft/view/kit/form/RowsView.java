package undercroft.view.kit.form;

import java.util.function.Function;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import undercroft.app.form.Group;
import undercroft.app.form.Rows;

/** One box for each row of a form, and a button that adds another. */
public final class RowsView<R extends Group> extends VBox {
    private final Rows<R> rows;
    private final Function<R, FormGrid> row;
    private final String removeWords;
    private final VBox boxes = new VBox(6);

    public RowsView(Rows<R> rows, Function<R, FormGrid> row, String removeWords, Button add) {
        super(4);
        this.rows = rows;
        this.row = row;
        this.removeWords = removeWords;
        getStyleClass().add("form-rows");
        add.getStyleClass().add("quiet");
        getChildren().addAll(boxes, add);
        rows.list().addListener((ListChangeListener<R>) change -> {
            while (change.next()) {
                boxes.getChildren().remove(change.getFrom(), change.getFrom() + change.getRemovedSize());
                for (int i = 0; i < change.getAddedSize(); i++) {
                    boxes.getChildren()
                            .add(
                                    change.getFrom() + i,
                                    box(change.getAddedSubList().get(i)));
                }
            }
        });
        rows.list().forEach(each -> boxes.getChildren().add(box(each)));
    }

    private Node box(R each) {
        Button remove = new Button(removeWords);
        remove.getStyleClass().addAll("quiet", "small");
        remove.setOnAction(event -> rows.remove(each));
        HBox foot = new HBox(remove);
        foot.getStyleClass().add("form-row-foot");
        VBox box = new VBox(row.apply(each), foot);
        box.getStyleClass().add("form-row");
        return box;
    }
}
