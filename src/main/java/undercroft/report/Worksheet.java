package undercroft.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import undercroft.bottling.BottlePressure;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Checklist;
import undercroft.bottling.DoseLine;
import undercroft.bottling.FillRow;
import undercroft.bottling.Step;
import undercroft.bottling.SugarPlan;
import undercroft.catalogue.Closure;
import undercroft.quantity.Interval;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;

/** A bottling day on one A4 sheet to hang by the tap: amounts, the list to tick, cautions, room for what was really done. */
public final class Worksheet {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final String STYLE = "@page{size:A4 portrait;margin:9mm}"
            + "body{font:7.9pt/1.2 Inter,'Helvetica Neue',Arial,sans-serif;color:#111;background:#fff;max-width:192mm;"
            + "margin:0 auto}h1{font-size:15pt;margin:0}h2{font-size:9.5pt;margin:2mm 0 .6mm;border-bottom:.3mm solid #111}"
            + "p{margin:.4mm 0}.verdict{border:.5mm solid #111;padding:1mm 2mm;margin:1.2mm 0;font-weight:600}"
            + ".cols{display:grid;grid-template-columns:1fr 1fr;column-gap:6mm}table{border-collapse:collapse;width:100%}"
            + "th,td{text-align:left;padding:.25mm 1.5mm .25mm 0;vertical-align:top}th{font-weight:600}"
            + "ul{margin:0;padding:0;list-style:none}li{padding-left:5.5mm;position:relative;margin:.7mm 0;"
            + "break-inside:avoid}li::before{content:'';position:absolute;left:0;top:.3mm;width:3mm;height:3mm;"
            + "border:.35mm solid #111}li span{display:block;font-size:7.1pt}.plain li{padding-left:3mm}"
            + ".plain li::before{width:1mm;height:1mm;top:1.3mm;background:#111;border:0}"
            + ".done{border-bottom:.2mm solid #111;display:inline-block;min-width:30mm}";

    private final BottlingDay day;
    private final UnitSystem units;
    private final WorksheetHtml page;

    private Worksheet(String title, BottlingDay day, UnitSystem units) {
        this.day = day;
        this.units = units;
        this.page = new WorksheetHtml(title, STYLE);
    }

    /**
     * The sheet as HTML with its print style; needs nothing from outside.
     *
     * @param batchName as the user calls it
     * @param on the day to print on top
     */
    public static String of(String batchName, BottlingDay day, UnitSystem units, LocalDate on) {
        Worksheet sheet = new Worksheet("Bottling day: " + batchName, day, units);
        sheet.page.element("h1", batchName);
        sheet.page.element("p", "Bottling day, " + DAY.format(on));
        sheet.verdict();
        sheet.page.open("div", "cols").open("div", "left");
        sheet.bottles();
        sheet.page.close("div").open("div", "right");
        sheet.sugar();
        sheet.page.close("div").close("div");
        sheet.pressure();
        sheet.steps();
        sheet.page.open("div", "cols").open("div", "left");
        sheet.supplies();
        sheet.page.close("div").open("div", "right");
        sheet.done();
        sheet.page.close("div").close("div");
        return sheet.page.text();
    }

    private void verdict() {
        String word = switch (day.unfinished().verdict()) {
            case GO -> "Go.";
            case WAIT -> "Wait.";
            case UNKNOWN -> "Not known to be finished.";
        };
        page.open("div", "verdict").element("p", word + " " + day.unfinished().reason());
        day.atStake().ifPresent(words -> page.element("p", words));
        day.refusals().forEach(words -> page.element("p", "Refused. " + words));
        page.close("div");
    }

    private void bottles() {
        page.element("h2", "Beer and bottles");
        page.element(
                "p",
                litres(day.plan().filling().shares().vesselLitres()) + " in the vessel, "
                        + litres(day.plan().filling().shares().lossLitres()) + " stay behind, "
                        + litres(day.order().bottleLitres()) + " to bottles"
                        + day.keg()
                                .map(keg -> ", " + litres(keg.litres()) + " to the keg")
                                .orElse("") + ".");
        page.open("table", "bottles").row("th", List.of("Fill", "Bottle", "Beer", "Sugar each"));
        for (FillRow row : day.order().rows()) {
            if (row.filled() > 0) {
                page.row(
                        "td",
                        List.of(
                                row.filled() + " of " + row.available(),
                                row.bottle().label() + ", "
                                        + row.bottle().colour().label(),
                                litres(row.filledLitres()),
                                sugarEach(row)));
            }
        }
        page.close("table").open("ul", "plain");
        day.notes().stream()
                .filter(note -> !day.sugar().notes().contains(note))
                .forEach(note -> page.element("li", note));
        page.close("ul");
    }

    private String sugarEach(FillRow row) {
        return day.sugar().perBottle().stream()
                .filter(per -> per.bottle().equals(row.bottle()))
                .findFirst()
                .map(per -> DoseLine.massText(per.grams().median()))
                .orElse("");
    }

    private void sugar() {
        SugarPlan sugar = day.sugar();
        page.element("h2", "Sugar, " + sugar.dosing().label());
        page.open("table", "sugar");
        page.row("td", List.of("Target", day.plan().filling().wish().targetVolumes() + " vol"));
        DoseLine.of(sugar.dose(), units).forEach(line -> page.row("td", List.of(line.label(), line.value())));
        page.close("table").open("ul", "plain");
        sugar.notes().forEach(note -> page.element("li", note));
        page.close("ul");
    }

    private void pressure() {
        if (day.weakest().isEmpty()) {
            return;
        }
        BottlePressure weakest = day.weakest().get();
        page.element("h2", "Pressure in the weakest bottle, " + weakest.bottle().label());
        page.open("table", "pressure");
        List<String> head = new ArrayList<>(List.of("at"));
        List<String> values = new ArrayList<>(List.of("best (low to safety)"));
        for (BottlePressure.AtWarmth warmth : weakest.warmths()) {
            head.add(whole(warmth.celsius()));
            values.add(bars(warmth.gaugeBar()));
        }
        head.add("never above");
        values.add(Pressure.ofBar(weakest.limits().workingPressureBar()).text(units) + heatLimit(weakest));
        page.row("th", head).row("td", values).close("table");
    }

    private String heatLimit(BottlePressure weakest) {
        return switch (weakest.heatLimit().reach()) {
            case NOT_REACHED -> ", no room is too warm";
            case BEYOND_WHEN_COLD -> ", passed even cold";
            case MATERIAL ->
                ", plastic no warmer than "
                        + whole(Math.floor(weakest.heatLimit().celsius()));
            case PRESSURE, LIQUID_FULL ->
                ", reached at " + whole(Math.floor(weakest.heatLimit().celsius()));
        };
    }

    private String bars(Interval bar) {
        return Pressure.ofBar(bar.median()).text(units) + " ("
                + Pressure.ofBar(bar.low()).text(units) + " to "
                + Pressure.ofBar(bar.high()).text(units) + ")";
    }

    private void steps() {
        page.element("h2", "In this order");
        page.open("ul", "steps");
        for (Step step : Checklist.of(day, units).steps()) {
            page.open("li", "step");
            page.element("b", step.words() + timer(step));
            String more = (step.oxygen() + " " + step.caution()).strip();
            if (!more.isEmpty()) {
                page.element("span", more);
            }
            page.close("li");
        }
        page.close("ul");
    }

    private static String timer(Step step) {
        return step.timer().map(time -> " [" + time.toMinutes() + " min]").orElse("");
    }

    private void supplies() {
        page.element("h2", "Lay ready");
        List<String> all = new ArrayList<>();
        for (Closure closure : Closure.values()) {
            if (day.supplies().closures().containsKey(closure)) {
                all.add(day.supplies().closures().get(closure) + " × " + closure.label() + " with spares");
            }
        }
        all.add(day.supplies().spareBottles() + " spare bottles");
        all.addAll(day.supplies().equipment());
        page.element("p", String.join("; ", all) + ".");
    }

    private void done() {
        page.element("h2", "As done");
        for (String what : List.of("Gravity", "Sugar weighed", "Bottles capped", "Capped at")) {
            page.open("p", "as-done")
                    .element("span", what + " ")
                    .element("span", "done", "")
                    .close("p");
        }
    }

    private String whole(double celsius) {
        return Temperature.ofCelsius(celsius).text(units).replace(".0 ", " ");
    }

    private String litres(double litres) {
        return Volume.ofLitres(litres).text(units);
    }
}
