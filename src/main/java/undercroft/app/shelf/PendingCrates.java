package undercroft.app.shelf;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Stage;
import undercroft.wording.ShelfWords;

/** The crates of a batch whose forecast is still being made: where they stand and what is left in them, no more. */
record PendingCrates(CellarOutlook outlook, Batch batch, ShelfWords words) {
    /** None for a batch that is not capped or of which no bottle is left. */
    Map<String, ShelfPlan.Crate> byPlace() {
        boolean capped =
                batch.cappedAt().map(instant -> !instant.isAfter(outlook.at())).orElse(false);
        Map<String, List<Lot>> lots = new LinkedHashMap<>();
        if (capped) {
            batch.lots().stream()
                    .filter(lot -> lot.leftAt(outlook.at()) > 0)
                    .forEach(
                            lot -> lots.computeIfAbsent(lot.stayAt(outlook.at()).placeId(), id -> new ArrayList<>())
                                    .add(lot));
        }
        Map<String, ShelfPlan.Crate> crates = new LinkedHashMap<>();
        lots.forEach((placeId, there) -> crates.put(placeId, crate(placeId, there)));
        return crates;
    }

    private ShelfPlan.Crate crate(String placeId, List<Lot> lots) {
        String place = outlook.cellar().place(placeId).name();
        List<Integer> left = lots.stream().map(lot -> lot.leftAt(outlook.at())).toList();
        int bottles = left.stream().mapToInt(Integer::intValue).sum();
        String state = words.of("shelf.crate.pending");
        return new ShelfPlan.Crate(
                batch.id() + "@" + placeId,
                batch.id(),
                lots.get(0).id(),
                batch.name(),
                Stage.CARBONATING,
                Alert.CLEAR,
                state,
                ShelfPlan.racks(outlook, lots, left),
                0,
                Duration.between(batch.cappedAt().orElseThrow(), outlook.at()).toSeconds(),
                words.of("shelf.crate.sentence", batch.name(), place, state, words.of("shelf.crate.left", bottles)),
                (batch.name() + " " + place + " " + words.nameOf(batch.beer().kind())).toLowerCase(Locale.ROOT),
                true);
    }
}
