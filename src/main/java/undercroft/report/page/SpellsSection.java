package undercroft.report.page;

import java.util.ArrayList;
import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.wording.ShelfWords;
import undercroft.wording.SpellWords;

/** Warm and cold spells, with what each did to the bottles; cold ones, which mostly cost nothing, are folded away. */
final class SpellsSection {
    private SpellsSection() {}

    static void write(Markup page, CellarOutlook outlook, ShelfWords words) {
        if (outlook.spells().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "spells")
                .element("h2", words.of("report.spells.title"), "id", "spells");
        List<SpellReview> warm =
                outlook.spells().stream().filter(SpellReview::warm).toList();
        List<SpellReview> cold =
                outlook.spells().stream().filter(spell -> !spell.warm()).toList();
        warm.forEach(spell -> spell(page, spell, words));
        if (!cold.isEmpty()) {
            page.open("details").element("summary", words.of("report.spells.cold", cold.size()));
            cold.forEach(spell -> spell(page, spell, words));
            page.close("details");
        }
        page.close("section");
    }

    private static void spell(Markup page, SpellReview spell, ShelfWords words) {
        page.open("div", "class", "spell").open("h3").name(spell.place().name());
        String key = spell.warm() ? "report.spells.warm-peak" : "report.spells.cold-peak";
        page.text(words.of(
                key, words.days(spell.from(), spell.until()), words.format().celsius(spell.peakCelsius())));
        page.close("h3");
        if (!spell.certain()) {
            page.element("p", words.of("report.spells.guessed"), "class", "faint");
        }
        if (spell.impacts().isEmpty()) {
            page.element("p", words.of("report.spells.no-bottles"), "class", "faint");
        } else {
            page.open("ul", "class", "plain");
            spell.worstOfEachBatch().forEach(impact -> impact(page, spell, impact, words));
            page.close("ul");
        }
        page.close("div");
    }

    private static void impact(Markup page, SpellReview spell, SpellImpact impact, ShelfWords words) {
        page.open("li").open("p", "class", "what");
        page.open("a", "href", "#batch-" + impact.batchId())
                .name(impact.batchName())
                .close("a");
        if (spell.warm()) {
            AlertMark.write(page.text(" "), impact.alert(), words);
        }
        page.close("p").element("p", new SpellWords(words).verdict(spell, impact));
        page.element("p", figures(impact, words), "class", "faint").close("li");
    }

    private static String figures(SpellImpact impact, ShelfWords words) {
        List<String> parts = new ArrayList<>();
        parts.add(words.of("report.spells.peak", words.format().bars(impact.peakGaugeBar())));
        if (impact.hoursOverWorkingPressure() >= 0.5) {
            parts.add(words.of("report.spells.over", (long) Math.ceil(impact.hoursOverWorkingPressure())));
        }
        parts.add(gained(words, impact.shelfDaysCost(), "report.spells.used", "report.spells.spared"));
        parts.add(gained(words, impact.carbonationDaysGained(), "report.spells.gained", "report.spells.lost"));
        parts.removeIf(String::isEmpty);
        return String.join(" · ", parts);
    }

    private static String gained(ShelfWords words, double days, String more, String less) {
        return Math.abs(days) < 0.5 ? "" : words.of(days > 0 ? more : less, Math.round(Math.abs(days)));
    }
}
