package undercroft.view.servings;

import java.io.File;
import java.nio.file.Path;
import java.time.Instant;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import undercroft.outlook.CellarOutlook;
import undercroft.report.ShelfCalendar;
import undercroft.store.Export;
import undercroft.view.kit.SavedFiles;
import undercroft.view.kit.WindowContext;
import undercroft.wording.ShelfWords;

/** Pours, first tastes and best-before dates for a calendar: one file, or one a batch. */
final class CalendarMenu extends MenuButton {
    private final WindowContext context;

    CalendarMenu(WindowContext context) {
        super(context.messages().of("servings.calendar.button"));
        this.context = context;
        setId("servings-calendar");
        getStyleClass().add("quiet");
        setMinWidth(USE_PREF_SIZE);
        MenuItem whole = new MenuItem(context.messages().of("servings.calendar.whole"));
        whole.setOnAction(event -> context.faults().guard(this::whole));
        MenuItem each = new MenuItem(context.messages().of("servings.calendar.each"));
        each.setOnAction(event -> context.faults().guard(this::each));
        getItems().addAll(whole, each);
    }

    private Window window() {
        return getScene().getWindow();
    }

    private void whole() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(context.messages().of("servings.calendar.whole"));
        chooser.setInitialFileName("undercroft.ics");
        write(chooser.showSaveDialog(window()), false);
    }

    private void each() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(context.messages().of("servings.calendar.each"));
        write(chooser.showDialog(window()), true);
    }

    private void write(File chosen, boolean perBatch) {
        CellarOutlook outlook = context.forecasts().outlookProperty().get();
        if (chosen != null && outlook != null) {
            Instant now = context.clock().instant();
            context.tasks()
                    .run(
                            () -> write(
                                    chosen.toPath(),
                                    perBatch,
                                    ShelfCalendar.of(ShelfWords.of(outlook, context.messages()), now)),
                            written -> context.faults().tell(context.messages().of("save.done", written)),
                            context.faults()::show);
        }
    }

    private static Path write(Path chosen, boolean perBatch, ShelfCalendar calendar) {
        if (perBatch) {
            Export.ofTexts().texts(chosen, calendar.perBatch(), Export.Replacing.OURS);
            return chosen;
        }
        // The chooser has asked before it gives the name of a file that is there.
        Path file = SavedFiles.withEnding(chosen, "ics");
        return Export.ofTexts().file(file, calendar.text(), Export.Replacing.ANY);
    }
}
