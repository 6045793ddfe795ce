package undercroft.app;

import java.util.Comparator;
import java.util.List;
import undercroft.outlook.Alert;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.PourPlan;

/** The bottles promised, as a short list. */
public record ShelfLists(List<Entry> pours) {
    public ShelfLists {
        pours = List.copyOf(pours);
    }

    /** A line of a list; {@code batchId} is the batch to turn to. */
    public record Entry(Alert alert, String what, String why, String batchId) {}

    /** In order of time, past ones left out. */
    public static ShelfLists of(CellarOutlook outlook) {
        Wording words = Wording.of(outlook);
        List<Entry> pours = outlook.pours().stream()
                .filter(plan -> plan.pour().at().isAfter(outlook.at()))
                .sorted(Comparator.comparing(plan -> plan.pour().at()))
                .map(plan -> entry(plan, outlook, words))
                .toList();
        return new ShelfLists(pours);
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
