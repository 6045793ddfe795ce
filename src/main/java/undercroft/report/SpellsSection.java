package undercroft.report;

import java.util.ArrayList;
import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.wording.SpellWords;

/** Warm and cold spells, with what each did to the bottles; cold ones, which mostly cost nothing, are folded away. */
final class SpellsSection {
    private SpellsSection() {}

    static void write(Markup page, CellarOutlook outlook, PageWords words) {
        if (outlook.spells().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "spells").element("h2", "Warm and cold spells", "id", "spells");
        List<SpellReview> warm =
                outlook.spells().stream().filter(SpellReview::warm).toList();
        List<SpellReview> cold =
                outlook.spells().stream().filter(spell -> !spell.warm()).toList();
        warm.forEach(spell -> spell(page, spell, words));
        if (!cold.isEmpty()) {
            page.open("details").element("summary", PageWords.count(cold.size(), "cold spell"));
            cold.forEach(spell -> spell(page, spell, words));
            page.close("details");
        }
        page.close("section");
    }

    private static void spell(Markup page, SpellReview spell, PageWords words) {
        page.open("div", "class", "spell").open("h3").name(spell.place().name());
        page.text(", " + words.days(spell.from(), spell.until()) + ": ");
        page.text((spell.warm() ? "up to " : "down to ") + words.celsius(spell.peakCelsius()));
        page.close("h3");
        if (!spell.certain()) {
            page.element("p", "Guessed: the log has gaps here.", "class", "faint");
        }
        if (spell.impacts().isEmpty()) {
            page.element("p", "No bottles stood there.", "class", "faint");
        } else {
            page.open("ul", "class", "plain");
            spell.worstOfEachBatch().forEach(impact -> impact(page, spell, impact, words));
            page.close("ul");
        }
        page.close("div");
    }

    private static void impact(Markup page, SpellReview spell, SpellImpact impact, PageWords words) {
        page.open("li").open("p", "class", "what");
        page.open("a", "href", "#batch-" + impact.batchId())
                .name(impact.batchName())
                .close("a");
        if (spell.warm()) {
            AlertMark.write(page.text(" "), impact.alert(), words);
        }
        page.close("p").element("p", new SpellWords(words.words()).verdict(spell, impact));
        page.element("p", figures(impact, words), "class", "faint").close("li");
    }

    private static String figures(SpellImpact impact, PageWords words) {
        List<String> parts = new ArrayList<>();
        parts.add("peak " + words.bars(impact.peakGaugeBar()));
        if (impact.hoursOverWorkingPressure() >= 0.5) {
            parts.add(
                    PageWords.count(impact.hoursOverWorkingPressure(), "hour") + " perhaps over the working pressure");
        }
        parts.add(gained(impact.shelfDaysCost(), "day", "of shelf life used up", "of shelf life spared"));
        parts.add(gained(impact.carbonationDaysGained(), "day", "of conditioning gained", "of conditioning lost"));
        parts.removeIf(String::isEmpty);
        return String.join(" · ", parts);
    }

    private static String gained(double days, String noun, String more, String less) {
        return Math.abs(days) < 0.5 ? "" : PageWords.count(Math.abs(days), noun) + " " + (days > 0 ? more : less);
    }
}
