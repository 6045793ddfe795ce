package undercroft.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.markup.Markup;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;

/** The bottles that are left, drawn one by one in their glass, filled as far as they are carbonated. */
final class BottleRow {
    private static final int MOST = 52;
    private static final int ONE_ROW = 20;
    private static final double PITCH = 10.5;
    private static final double ROOM = 276;
    private static final double GROUND = 45;
    private static final double STEP_BACK = 5;
    private static final double HEIGHT_OF_330 = 31;

    private BottleRow() {}

    /** Draws those of a batch; {@code key} makes its ids unique in the page. */
    static void write(Markup page, BatchOutlook batch, String key) {
        page.open(
                "svg",
                "class",
                "bottles",
                "viewBox",
                "0 0 " + number(ROOM) + " 46",
                "preserveAspectRatio",
                "xMinYMax meet",
                "aria-hidden",
                "true");
        List<LotOutlook> lots =
                batch.lots().stream().filter(lot -> lot.left() > 0).toList();
        int left = lots.stream().mapToInt(LotOutlook::left).sum();
        double shrink = Math.min(1, (double) MOST / Math.max(1, left));
        boolean twoRows = left > ONE_ROW;
        int first = 0;
        for (int i = 0; i < lots.size(); i++) {
            int drawn = Math.max(1, (int) Math.round(lots.get(i).left() * shrink));
            write(page, lots.get(i), key + "-" + i, first, drawn, twoRows);
            first += drawn;
        }
        page.close("svg");
    }

    private static void write(Markup page, LotOutlook lot, String id, int first, int count, boolean twoRows) {
        double full = Math.max(0, Math.min(1, lot.carbonation().fractionDone().median())) * 0.84;
        Shape shape = Shape.of(lot.pressure().bottle());
        List<StringBuilder> rows = new ArrayList<>(List.of(new StringBuilder(), new StringBuilder()));
        StringBuilder caps = new StringBuilder();
        for (int i = first; i < first + count; i++) {
            boolean back = twoRows && i % 2 == 1;
            double x = 4 + (twoRows ? Math.floorDiv(i, 2) * PITCH + (back ? PITCH / 2 : 0) : i * (PITCH + 3));
            double ground = back ? GROUND - STEP_BACK : GROUND;
            rows.get(back ? 0 : 1).append(shape.path(x, ground));
            caps.append(shape.cap(x, ground));
        }
        page.open("g", "class", "glass-" + lot.lot().colour().id());
        page.open("linearGradient", "id", id, "x1", "0", "y1", "1", "x2", "0", "y2", "0");
        page.empty("stop", "class", "beer", "offset", number(full));
        page.empty("stop", "class", "empty", "offset", number(full)).close("linearGradient");
        for (StringBuilder row : rows) {
            if (row.length() > 0) {
                page.empty("path", "class", "bottle", "fill", "url(#" + id + ")", "d", row.toString());
            }
        }
        page.empty("path", "class", "cap", "d", caps.toString()).close("g");
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    private record Shape(double width, double height, double neck, double shoulderTop, double shoulderFoot) {
        static Shape of(BottleType type) {
            double width = Math.max(6.5, Math.min(9.5, type.bodyMillimetres() * 0.12));
            double height = Math.min(38, HEIGHT_OF_330 * Math.pow(type.fillMillilitres() / 330, 0.22));
            if (type.bottleClass().isSparkling()) {
                return new Shape(width, height, 0.40, 0.30, 0.62);
            }
            if (type.bottleClass().isPlastic()) {
                return new Shape(width, height, 0.46, 0.14, 0.36);
            }
            return new Shape(width, height, 0.38, type.closure() == Closure.SWING_TOP ? 0.30 : 0.36, 0.54);
        }

        String path(double x, double ground) {
            double top = ground - height;
            double left = x + width / 2 - width * neck / 2;
            double right = x + width / 2 + width * neck / 2;
            double neckFoot = top + height * shoulderTop;
            double shoulder = top + height * shoulderFoot;
            double bend = (shoulder - neckFoot) * 0.55;
            return String.format(
                            Locale.ROOT,
                            "M%s %sV%sC%s %s %s %s %s %s",
                            n(left),
                            n(top),
                            n(neckFoot),
                            n(left),
                            n(neckFoot + bend),
                            n(x),
                            n(shoulder - bend),
                            n(x),
                            n(shoulder))
                    + String.format(
                            Locale.ROOT,
                            "V%sH%sV%sC%s %s %s %s %s %sV%sZ",
                            n(ground),
                            n(x + width),
                            n(shoulder),
                            n(x + width),
                            n(shoulder - bend),
                            n(right),
                            n(neckFoot + bend),
                            n(right),
                            n(neckFoot),
                            n(top));
        }

        String cap(double x, double ground) {
            double half = width * neck / 2 + 0.5;
            return String.format(
                    Locale.ROOT,
                    "M%s %sh%sv2h-%sZ",
                    n(x + width / 2 - half),
                    n(ground - height - 1.6),
                    n(2 * half),
                    n(2 * half));
        }

        private static String n(double value) {
            return number(Math.round(value * 10) / 10.0);
        }
    }
}
