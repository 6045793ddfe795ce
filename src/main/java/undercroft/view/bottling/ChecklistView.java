package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DayList;
import undercroft.app.bottling.PlanForm;
import undercroft.bottling.Step;
import undercroft.outlook.lot.Alert;

/** The day's list to tick, made for wet hands: wide rows, arrows to move, Space or Enter to tick. */
final class ChecklistView extends VBox {
    private final BottlingContext context;
    private final VBox rows = new VBox(4);
    private final List<StepView> shown = new ArrayList<>();

    ChecklistView(BottlingContext context, PlanForm form) {
        super(10);
        setId("day");
        this.context = context;
        Button save = new Button(context.messages().of("bottling.papers.save-sheet"));
        save.setId("sheet-save");
        save.setOnAction(event -> context.model()
                .printouts()
                .ifPresent(printouts ->
                        context.printouts().save(this, printouts.fileName("worksheet"), printouts::worksheet)));
        Button print = new Button(context.messages().of("bottling.papers.print"));
        print.setId("sheet-print");
        print.setOnAction(event -> context.model()
                .printouts()
                .ifPresent(printouts -> context.printouts().print(this, printouts)));
        FlowPane buttons = new FlowPane(8, 8, save, print);
        getChildren().addAll(buttons, context.printouts().answer(), rows);
        form.dayProperty().addListener((property, before, after) -> write());
        write();
    }

    private void write() {
        Optional<DayList> list = context.model().dayList();
        if (list.isEmpty()) {
            shown.clear();
            rows.getChildren()
                    .setAll(Labels.note(Alert.WATCH, context.messages().of("bottling.nothing-yet")));
            return;
        }
        List<Step> steps = list.get().checklist().steps();
        if (shown.stream().map(StepView::step).toList().equals(steps)) {
            shown.forEach(row -> row.show(list.get()));
            return;
        }
        shown.clear();
        steps.forEach(step -> shown.add(new StepView(context, step)));
        shown.forEach(row -> row.show(list.get()));
        rows.getChildren().setAll(shown);
    }

    /** Moves the timers on. */
    void second() {
        context.model().dayList().ifPresent(list -> shown.forEach(row -> row.showTimer(list)));
    }
}
