package undercroft.view.bottling;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.outlook.lot.Alert;

/** What follows from the plan, written anew at each change of it. */
final class SheetView extends VBox {
    private final BottlingContext context;
    private final PlanForm form;
    private final Function<DaySheet, List<Node>> writing;

    SheetView(BottlingContext context, PlanForm form, Function<DaySheet, List<Node>> writing) {
        super(8);
        this.context = context;
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
                                        new DaySheet(day, context.model().words()))),
                        () -> getChildren().setAll(Labels.note(Alert.WATCH, why())));
    }

    private String why() {
        String fault = form.faultProperty().get();
        return fault.isEmpty() ? context.messages().of("bottling.nothing-yet") : fault;
    }
}
