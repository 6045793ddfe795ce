package undercroft.view.bottling;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.form.DraftForm;
import undercroft.outlook.lot.Alert;
import undercroft.wording.Texts;

/** What follows from the draft, written anew at each change of it. */
final class Live extends VBox {
    private final BottlingContext bench;
    private final DraftForm form;
    private final Function<DaySheet, List<Node>> writing;

    Live(BottlingContext bench, DraftForm form, Function<DaySheet, List<Node>> writing) {
        super(8);
        this.bench = bench;
        this.form = form;
        this.writing = writing;
        form.dayProperty().addListener((property, before, after) -> write());
        form.faultProperty().addListener((property, before, after) -> write());
        write();
    }

    private void write() {
        form.dayProperty()
                .get()
                .ifPresentOrElse(
                        day -> getChildren()
                                .setAll(writing.apply(
                                        new DaySheet(day, bench.model().words()))),
                        () -> getChildren().setAll(Words.note(Alert.WATCH, why())));
    }

    private String why() {
        String fault = form.faultProperty().get();
        return fault.isEmpty() ? Texts.of("bottling.nothing-yet") : fault;
    }
}
