package undercroft.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Check;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;

/**
 * What is written on a crate.
 *
 * @param batch name of the beer
 * @param bottles how many of which kind are in it
 * @param bottled the day it was capped
 * @param firstTaste the day it is probably ready; empty when it is not in sight
 * @param heatLimit in words
 * @param bestBefore empty when it keeps for more than ten years
 */
public record CrateLabel(
        String batch,
        String bottles,
        LocalDate bottled,
        Optional<LocalDate> firstTaste,
        String heatLimit,
        Optional<LocalDate> bestBefore) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final String STYLE = "@page{size:A4 portrait;margin:10mm}"
            + "body{font:11pt/1.3 Inter,'Helvetica Neue',Arial,sans-serif;color:#111;background:#fff;margin:0}"
            + ".label{display:inline-block;box-sizing:border-box;width:92mm;height:64mm;border:.3mm dashed #111;"
            + "padding:4mm;margin:0 1mm 2mm 0;vertical-align:top;overflow:hidden;break-inside:avoid}"
            + "h1{font-size:16pt;line-height:1.1;margin:0 0 1mm;max-height:12.5mm;overflow:hidden}p{margin:0}"
            + "table{border-collapse:collapse}td{padding:.2mm 3mm .2mm 0;vertical-align:top}";

    /**
     * Labels for all crates of a capped batch, each lot by itself.
     *
     * @param bottlesInCrate how many a crate takes, 1 to 100
     * @param zone of the cellar
     */
    public static List<CrateLabel> of(BatchOutlook outlook, int bottlesInCrate, ZoneId zone, UnitSystem units) {
        Check.within("bottlesInCrate", bottlesInCrate, 1, 100);
        List<CrateLabel> labels = new ArrayList<>();
        for (LotOutlook lot : outlook.lots()) {
            for (int left = lot.left(); left > 0; left -= bottlesInCrate) {
                labels.add(new CrateLabel(
                        outlook.batch().name(),
                        Math.min(left, bottlesInCrate) + " × "
                                + lot.pressure().bottle().label(),
                        day(outlook.batch().cappedAt().orElseThrow(), zone),
                        lot.ready().median().map(ready -> day(ready, zone)),
                        heatLimit(lot.pressure().heatLimitCelsius(), units),
                        lot.ageing().bestBefore()));
            }
        }
        return labels;
    }

    /** Labels to print and cut out, eight to an A4 sheet. */
    public static String page(List<CrateLabel> labels) {
        String title = labels.isEmpty() ? "Labels" : "Labels: " + labels.get(0).batch();
        WorksheetHtml page = new WorksheetHtml(title, STYLE);
        for (CrateLabel label : labels) {
            page.open("div", "label").element("h1", label.batch()).element("p", label.bottles());
            page.open("table", "figures");
            page.row("td", List.of("Bottled", DAY.format(label.bottled())));
            page.row(
                    "td",
                    List.of("First taste", label.firstTaste().map(DAY::format).orElse("not in sight")));
            page.row("td", List.of("Heat limit", label.heatLimit()));
            page.row(
                    "td",
                    List.of("Best before", label.bestBefore().map(DAY::format).orElse("more than ten years")));
            page.close("table")
                    .element("p", "Upright, cool, dark. Under pressure.")
                    .close("div");
        }
        return page.text();
    }

    private static LocalDate day(Instant instant, ZoneId zone) {
        return instant.atZone(zone).toLocalDate();
    }

    private static String heatLimit(double celsius, UnitSystem units) {
        if (celsius < 0) {
            return "over its limit even cold";
        }
        return Double.isInfinite(celsius)
                ? "none in a room"
                : "never above "
                        + Temperature.ofCelsius(Math.floor(celsius)).text(units).replace(".0 ", " ");
    }
}
