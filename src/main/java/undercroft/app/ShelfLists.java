package undercroft.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.outlook.Alert;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.SpellReview;

/** The warm and cold spells of all places, as a short list. */
public record ShelfLists(List<Entry> spells) {
    public ShelfLists {
        spells = List.copyOf(spells);
    }

    /** A line of a list; {@code batchId} is the batch to turn to. */
    public record Entry(Alert alert, String what, String why, String batchId) {}

    /** Newest spells first, one line for each batch they touched. */
    public static ShelfLists of(CellarOutlook outlook) {
        Wording words = Wording.of(outlook);
        List<Entry> spells = new ArrayList<>();
        outlook.spells().stream()
                .sorted(Comparator.comparing(SpellReview::from).reversed())
                .forEach(spell -> spell.tolls().forEach(toll -> spells.add(entry(spell, toll, words))));
        return new ShelfLists(spells);
    }

    private static Entry entry(SpellReview spell, SpellReview.Toll toll, Wording words) {
        String what = Texts.of(
                spell.warm() ? "lists.spell.warm" : "lists.spell.cold",
                toll.batchName(),
                spell.place().name(),
                words.temperature(spell.peakCelsius()));
        String why = Texts.of("lists.spell.why", words.day(spell.from()), words.day(spell.until()), toll.verdict());
        return new Entry(toll.alert(), what, why, toll.batchId());
    }
}
