package undercroft.view.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.DayList;
import undercroft.app.form.DraftForm;
import undercroft.bottling.Step;
import undercroft.outlook.lot.Alert;
import undercroft.wording.Texts;

/** The day's list to tick, made for wet hands: wide rows, arrows to move, Space or Enter to tick. */
final class DayScreen extends VBox {
    private final BottlingContext bench;
    private final VBox rows = new VBox(4);
    private final List<StepRow> shown = new ArrayList<>();

    DayScreen(BottlingContext bench, DraftForm form) {
        super(10);
        setId("day");
        this.bench = bench;
        Button save = new Button(Texts.of("bottling.papers.save-sheet"));
        save.setId("sheet-save");
        save.setOnAction(event -> bench.model().papers().ifPresent(papers -> bench.papers()
                .save(this, papers.fileName("worksheet"), papers::worksheet)));
        Button print = new Button(Texts.of("bottling.papers.print"));
        print.setId("sheet-print");
        print.setOnAction(event ->
                bench.model().papers().ifPresent(papers -> bench.papers().print(this, papers)));
        FlowPane buttons = new FlowPane(8, 8, save, print);
        getChildren().addAll(buttons, bench.papers().answer(), rows);
        form.dayProperty().addListener((property, before, after) -> write());
        write();
    }

    private void write() {
        Optional<DayList> list = bench.model().dayList();
        if (list.isEmpty()) {
            shown.clear();
            rows.getChildren().setAll(Words.note(Alert.WATCH, Texts.of("bottling.nothing-yet")));
            return;
        }
        List<Step> steps = list.get().checklist().steps();
        if (shown.stream().map(StepRow::step).toList().equals(steps)) {
            shown.forEach(row -> row.show(list.get()));
            return;
        }
        shown.clear();
        steps.forEach(step -> shown.add(new StepRow(bench, step)));
        shown.forEach(row -> row.show(list.get()));
        rows.getChildren().setAll(shown);
    }

    /** Moves the timers on. */
    void second() {
        bench.model().dayList().ifPresent(list -> shown.forEach(row -> row.showTimer(list)));
    }
}
