package undercroft.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import undercroft.bottling.BottlePressure;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Checklist;
import undercroft.bottling.FillRow;
import undercroft.bottling.Step;
import undercroft.bottling.SugarPlan;
import undercroft.catalogue.Closure;
import undercroft.markup.Markup;
import undercroft.markup.PageHead;
import undercroft.quantity.Phrase;
import undercroft.wording.DoseLine;
import undercroft.wording.QuantityFormat;

/** A bottling day on one A4 sheet to hang by the tap: amounts, the list to tick, cautions, room for what was really done. */
public final class Worksheet {
    private static final String STYLE = "@page{size:A4 portrait;margin:9mm}"
            + "body{font:7.9pt/1.2 Inter,system-ui,sans-serif;color:#111;background:#fff;max-width:192mm;"
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
    private final QuantityFormat words;
    private final Markup page;

    private Worksheet(String title, BottlingDay day, QuantityFormat words) {
        this.day = day;
        this.words = words;
        this.page = PageHead.begin(words.messages().locale(), title, STYLE);
    }

    /**
     * The sheet as HTML with its print style; needs nothing from outside.
     *
     * @param batchName as the user calls it
     * @param on the day to print on top
     */
    public static String of(String batchName, BottlingDay day, QuantityFormat words, LocalDate on) {
        Worksheet sheet = new Worksheet(words.of("worksheet.title", batchName), day, words);
        sheet.page.element("h1", batchName);
        sheet.page.element("p", words.of("worksheet.day", words.day(on)));
        sheet.verdict();
        sheet.page.open("div", "class", "cols").open("div", "class", "left");
        sheet.bottles();
        sheet.page.close("div").open("div", "class", "right");
        sheet.sugar();
        sheet.page.close("div").close("div");
        sheet.pressure();
        sheet.steps();
        sheet.page.open("div", "class", "cols").open("div", "class", "left");
        sheet.supplies();
        sheet.page.close("div").open("div", "class", "right");
        sheet.done();
        sheet.page.close("div").close("div");
        return PageHead.end(sheet.page);
    }

    private void verdict() {
        String key = switch (day.unfinished().verdict()) {
            case GO -> "worksheet.verdict.go";
            case WAIT -> "worksheet.verdict.wait";
            case UNKNOWN -> "worksheet.verdict.unknown";
        };
        page.open("div", "class", "verdict")
                .element("p", words.of(key, words.of(day.unfinished().reason())));
        day.atStake().ifPresent(stake -> page.element("p", words.of(stake)));
        day.refusals().forEach(refusal -> page.element("p", words.of("worksheet.refused", words.of(refusal))));
        page.close("div");
    }

    private void bottles() {
        heading("worksheet.bottles");
        page.element(
                "p",
                words.of(
                        day.keg().isPresent() ? "worksheet.shares.keg" : "worksheet.shares",
                        words.litres(day.plan().filling().shares().vesselLitres()),
                        words.litres(day.plan().filling().shares().lossLitres()),
                        words.litres(day.order().bottleLitres()),
                        words.litres(day.plan().filling().shares().kegLitres())));
        page.open("table", "class", "bottles");
        row(
                "th",
                List.of(
                        words.of("worksheet.head.fill"),
                        words.of("worksheet.head.bottle"),
                        words.of("worksheet.head.beer"),
                        words.of("worksheet.head.sugar")));
        for (FillRow row : day.order().rows()) {
            if (row.filled() > 0) {
                row(
                        "td",
                        List.of(
                                words.of("bottling.bottles.of", row.filled(), row.available()),
                                words.of(
                                        "bottling.bottle",
                                        row.bottle(),
                                        row.bottle().colour()),
                                words.litres(row.filledLitres()),
                                sugarEach(row)));
            }
        }
        page.close("table");
        notes(day.notes().stream()
                .filter(note -> !day.sugar().notes().contains(note))
                .toList());
    }

    private void row(String cell, List<String> texts) {
        page.open("tr");
        texts.forEach(text -> page.element(cell, text));
        page.close("tr");
    }

    private void heading(String key, Object... arguments) {
        page.element("h2", words.of(key, arguments));
    }

    private void notes(List<Phrase> notes) {
        page.open("ul", "class", "plain");
        notes.forEach(note -> page.element("li", words.of(note)));
        page.close("ul");
    }

    private String sugarEach(FillRow row) {
        return day.sugar().perBottle().stream()
                .filter(per -> per.bottle().equals(row.bottle()))
                .findFirst()
                .map(per -> words.weighed(per.grams().median()))
                .orElse("");
    }

    private void sugar() {
        SugarPlan sugar = day.sugar();
        heading("worksheet.sugar", sugar.dosing());
        page.open("table", "class", "sugar");
        row(
                "td",
                List.of(
                        words.of("worksheet.target"),
                        words.statedVolumes(day.plan().filling().wish().targetVolumes())));
        DoseLine.of(sugar.dose(), words).forEach(line -> row("td", List.of(line.label(), line.value())));
        page.close("table");
        notes(sugar.notes());
    }

    private void pressure() {
        if (day.weakest().isEmpty()) {
            return;
        }
        BottlePressure weakest = day.weakest().get();
        heading("worksheet.pressure", weakest.bottle());
        page.open("table", "class", "pressure");
        List<String> head = new ArrayList<>(List.of(words.of("worksheet.head.at")));
        List<String> values = new ArrayList<>(List.of(words.of("worksheet.head.estimates")));
        for (BottlePressure.AtWarmth warmth : weakest.warmths()) {
            head.add(words.statedCelsius(warmth.celsius()));
            values.add(words.bars(warmth.gaugeBar()));
        }
        head.add(words.of("worksheet.head.limit"));
        double heat = switch (weakest.heatLimit().reach()) {
            case NOT_REACHED -> Double.POSITIVE_INFINITY;
            case BEYOND_WHEN_COLD -> -1;
            case PRESSURE, LIQUID_FULL, MATERIAL -> weakest.heatLimit().celsius();
        };
        values.add(words.of(
                "worksheet.limit", words.barLimit(weakest.limits().workingPressureBar()), words.heatLimit(heat)));
        row("th", head);
        row("td", values);
        page.close("table");
    }

    private void steps() {
        heading("worksheet.steps");
        page.open("ul", "class", "steps");
        for (Step step : Checklist.of(day).steps()) {
            page.open("li", "class", "step");
            page.element(
                    "b",
                    step.timer()
                            .map(time -> words.of("worksheet.timed", words.of(step.words()), time.toMinutes()))
                            .orElseGet(() -> words.of(step.words())));
            step.oxygen().ifPresent(habit -> page.element("span", words.of(habit)));
            step.caution().ifPresent(caution -> page.element("span", words.of(caution)));
            page.close("li");
        }
        page.close("ul");
    }

    private void supplies() {
        heading("bottling.supplies.title");
        List<String> all = new ArrayList<>();
        for (Closure closure : Closure.values()) {
            if (day.supplies().closures().containsKey(closure)) {
                all.add(words.of(
                        "bottling.supplies.closures", day.supplies().closures().get(closure), closure));
            }
        }
        all.add(words.of("bottling.supplies.bottles", day.supplies().spareBottles()));
        day.supplies().equipment().forEach(tool -> all.add(words.of(tool)));
        page.element("p", words.messages().sentence(String.join("; ", all)));
    }

    private void done() {
        heading("worksheet.done");
        for (String what : List.of(
                words.of("worksheet.done.gravity"),
                words.of("worksheet.done.sugar"),
                words.of("worksheet.done.bottles"),
                words.of("worksheet.done.capped"))) {
            page.open("p", "class", "as-done")
                    .element("span", what + " ")
                    .element("span", "", "class", "done")
                    .close("p");
        }
        page.element("p", words.of("caution.estimate"));
    }
}
