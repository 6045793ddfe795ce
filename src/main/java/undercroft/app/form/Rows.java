package undercroft.app.form;

import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;

/** Groups of the same fields, one for each of several things. */
public final class Rows<R extends Group> {
    private final ObservableList<R> list = FXCollections.observableArrayList();

    Rows(Runnable onChange) {
        list.addListener((ListChangeListener<R>) change -> {
            list.forEach(row -> row.listen(onChange));
            onChange.run();
        });
    }

    /** Observable; to be changed through the form only. */
    public ObservableList<R> list() {
        return list;
    }

    public void remove(R row) {
        list.remove(row);
    }
}
