package undercroft.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.outlook.Alert;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.PourPlan;
import undercroft.outlook.SpellReview;

/** The warm and cold spells of all places, and the bottles promised, as short lists. */
public record ShelfLists(List<Entry> spells, List<Entry> pours) {
    public ShelfLists {
        spells = List.copyOf(spells);
        pours = List.copyOf(pours);
    }

    /** A line of a list; {@code batchId} is the batch to turn to. */
    public record Entry(Alert alert, String what, String why, String batchId) {}

    /** Newest spells first, one line for each batch they touched; pours in order of time, past ones left out. */
    public static ShelfLists of(CellarOutlook outlook) {
        Wording words = Wording.of(outlook);
        List<Entry> spells = new ArrayList<>();
        outlook.spells().stream()
                .sorted(Comparator.comparing(SpellReview::from).reversed())
                .forEach(spell -> spell.tolls().forEach(toll -> spells.add(entry(spell, toll, words))));
        List<Entry> pours = outlook.pours().stream()
                .filter(plan -> plan.pour().at().isAfter(outlook.at()))
                .sorted(Comparator.comparing(plan -> plan.pour().at()))
                .map(plan -> entry(plan, outlook, words))
                .toList();
        return new ShelfLists(spells, pours);
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

    private static Entry entry(PourPlan plan, CellarOutlook outlook, Wording words) {
        String what = Texts.counted(
                "lists.pour.what",
                plan.pour().bottles(),
                outlook.batch(plan.pour().batchId()).batch().name(),
                words.when(plan.pour().at()));
        String chill = plan.chillFrom()
                .map(from -> Texts.of("lists.pour.chill", words.when(from)))
                .orElseGet(() -> Texts.of("lists.pour.too-late"));
        boolean well = plan.readyByThen() && plan.chillFrom().isPresent();
        String why = plan.why().isEmpty() ? chill : Texts.of("words.list.joint", chill, plan.why());
        return new Entry(
                well ? Alert.CLEAR : Alert.WATCH, what, why, plan.pour().batchId());
    }
}
