package undercroft.report.page;

import undercroft.markup.Markup;
import undercroft.outlook.lot.Alert;
import undercroft.wording.ShelfWords;

/** The alert as a shape with its word: neither colour nor shape is needed to read it. Nothing where all is clear. */
final class AlertMark {
    private AlertMark() {}

    static Markup write(Markup page, Alert alert, ShelfWords words) {
        if (alert == Alert.CLEAR) {
            return page;
        }
        page.open("span", "class", "alert " + cssName(alert));
        page.open("svg", "class", "sign", "viewBox", "0 0 16 16", "width", "16", "height", "16", "aria-hidden", "true");
        if (alert == Alert.WATCH) {
            page.empty("path", "d", "M8 2.2 14.4 13.4H1.6Z");
        } else {
            page.empty("path", "class", "full", "d", "M8 .8 15.2 8 8 15.2.8 8Z");
        }
        return page.closeInline("svg").text(words.nameOf(alert)).closeInline("span");
    }

    static String cssName(Alert alert) {
        return switch (alert) {
            case CLEAR -> "clear";
            case WATCH -> "watch";
            case ACT -> "act";
        };
    }
}
