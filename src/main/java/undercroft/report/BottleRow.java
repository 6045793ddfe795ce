package undercroft.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
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

    /** The drawing of a batch; {@code key} makes its ids unique in the page. */
    static String svg(BatchOutlook batch, String key) {
        StringBuilder svg = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg class=\"bottles\" viewBox=\"0 0 %s 46\" preserveAspectRatio=\"xMinYMax meet\" aria-hidden=\"true\">\n",
                number(ROOM)));
        List<LotOutlook> lots =
                batch.lots().stream().filter(lot -> lot.left() > 0).toList();
        int left = lots.stream().mapToInt(LotOutlook::left).sum();
        double shrink = Math.min(1, (double) MOST / Math.max(1, left));
        boolean twoRows = left > ONE_ROW;
        int first = 0;
        for (int i = 0; i < lots.size(); i++) {
            int drawn = Math.max(1, (int) Math.round(lots.get(i).left() * shrink));
            svg.append(lot(lots.get(i), key + "-" + i, first, drawn, twoRows));
            first += drawn;
        }
        return svg.append("</svg>\n").toString();
    }

    private static String lot(LotOutlook lot, String id, int first, int count, boolean twoRows) {
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
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<g class=\"glass-%s\"><linearGradient id=\"%s\" x1=\"0\" y1=\"1\" x2=\"0\" y2=\"0\">",
                lot.lot().colour().id(),
                id));
        svg.append(String.format(
                Locale.ROOT,
                "<stop class=\"beer\" offset=\"%1$s\"/><stop class=\"empty\" offset=\"%1$s\"/></linearGradient>",
                number(full)));
        for (StringBuilder row : rows) {
            if (row.length() > 0) {
                svg.append(String.format(Locale.ROOT, "<path class=\"bottle\" fill=\"url(#%s)\" d=\"%s\"/>", id, row));
            }
        }
        return svg.append("<path class=\"cap\" d=\"")
                .append(caps)
                .append("\"/></g>\n")
                .toString();
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("\\.?0+$", "");
    }

    private record Shape(double width, double height, double neck, double shoulderTop, double shoulderFoot) {
        static Shape of(BottleType type) {
            double width = Math.max(6.5, Math.min(9.5, type.bodyMillimetres() * 0.12));
            double height = Math.min(38, HEIGHT_OF_330 * Math.pow(type.fillMillilitres() / 330, 0.22));
            if (type.bottleClass() == BottleClass.SPARKLING) {
                return new Shape(width, height, 0.40, 0.30, 0.62);
            }
            if (type.bottleClass() == BottleClass.PET) {
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
