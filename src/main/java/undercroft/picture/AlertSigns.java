package undercroft.picture;

import undercroft.outlook.lot.Alert;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Role;

/** Alerts on pictures: a shape and a colour each, so that neither is needed to tell them apart. */
final class AlertSigns {
    private AlertSigns() {}

    static MarkerShape shape(Alert alert) {
        return switch (alert) {
            case CLEAR -> MarkerShape.CIRCLE;
            case WATCH -> MarkerShape.TRIANGLE;
            case ACT -> MarkerShape.DIAMOND;
        };
    }

    static Role role(Alert alert) {
        return switch (alert) {
            case CLEAR -> Role.READY;
            case WATCH -> Role.SPELL;
            case ACT -> Role.LIMIT;
        };
    }

    /** The sign around a point: the gravest one is filled. */
    static void add(MarkList marks, Alert alert, double x, double y, double radius) {
        Role role = role(alert);
        marks.add(new Mark.Marker(shape(alert), x, y, radius, alert == Alert.ACT ? role : Role.PAPER, role));
    }
}
