package undercroft.view.kit;

import undercroft.app.Reminders;
import undercroft.outlook.CellarOutlook;

/** Tells once what has become due while the window is open. */
public final class Notices {
    private final Reminders reminders = new Reminders();
    private final WindowContext context;

    private Notices(WindowContext context) {
        this.context = context;
    }

    /** Watches the outlook for as long as the window is open. */
    public static void follow(WindowContext context) {
        Notices notices = new Notices(context);
        context.forecasts().outlookProperty().addListener((property, before, after) -> notices.tell(after));
    }

    private void tell(CellarOutlook outlook) {
        // A day looked at in past or future reminds nobody of anything.
        if (context.forecasts().asOfProperty().get() == null) {
            reminders.fresh(outlook, context.messages()).stream()
                    .map(reminder -> context.messages().of("todo.line.sentence", reminder.title(), reminder.text()))
                    .forEach(context.faults()::tell);
        }
    }
}
