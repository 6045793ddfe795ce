package undercroft.view.kit;

import javafx.geometry.Pos;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.controlsfx.control.Notifications;
import undercroft.app.Reminders;
import undercroft.outlook.CellarOutlook;

/** Quiet notices in a corner of the open window; each is gone after a while by itself. */
public final class Notices {
    private static final Duration STAYS = Duration.seconds(12);

    private final Reminders reminders = new Reminders();
    private final WindowContext context;
    private final Stage stage;

    private Notices(WindowContext context, Stage stage) {
        this.context = context;
        this.stage = stage;
    }

    /** Watches the outlook for as long as the window is open. */
    public static void over(Stage stage, WindowContext context) {
        Notices notices = new Notices(context, stage);
        context.forecasts().outlookProperty().addListener((property, before, after) -> notices.tell(after));
    }

    private void tell(CellarOutlook outlook) {
        // A day looked at in past or future reminds nobody of anything.
        if (context.forecasts().asOfProperty().get() != null) {
            return;
        }
        for (Reminders.Reminder reminder : reminders.fresh(outlook, context.messages())) {
            if (stage.isShowing()) {
                show(reminder);
            }
        }
    }

    private void show(Reminders.Reminder reminder) {
        Notifications notice = Notifications.create()
                .owner(stage)
                .title(reminder.title())
                .text(reminder.text())
                .position(Pos.BOTTOM_RIGHT)
                .hideAfter(STAYS);
        if (context.dark().get()) {
            notice.darkStyle();
        }
        notice.show();
    }
}
