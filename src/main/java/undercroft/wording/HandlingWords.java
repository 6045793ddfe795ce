package undercroft.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.catalogue.Cover;
import undercroft.outlook.Destination;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;

/** What is to be done first with bottles that may burst, and what to heed with them: the same words on every screen. */
public record HandlingWords(ShelfWords words) {
    private static final List<String> HELD_BACK =
            List.of("caution.act.eyes", "caution.act.knocks", "caution.act.people");
    private static final List<String> WATCHED = List.of("caution.watch.cool", "caution.watch.handle");

    /** The first thing to do, a sentence; empty where nothing is out of the ordinary. */
    public String first(LotOutlook lot) {
        return switch (lot.handling()) {
            case NONE -> "";
            case MOVE_NOW -> move(lot);
            case COOL_WHERE_IT_STANDS -> words.of(isBoxed(lot) ? "handling.cool-boxed" : "handling.cool-open");
            case OPEN_COLD -> words.of("handling.open-cold");
            case THAW_IN_THE_COLD -> words.of("handling.thaw");
        };
    }

    private boolean isBoxed(LotOutlook lot) {
        return lot.lot().stayAt(words.at()).cover() == Cover.CLOSED_BOX;
    }

    private String move(LotOutlook lot) {
        String limit = words.format().heatLimit(lot.pressure().heatLimitCelsius());
        Optional<Destination> coolest = words.outlook().coolestFor(lot);
        if (coolest.isEmpty()) {
            return words.of("handling.move", limit);
        }
        Destination place = coolest.get();
        return words.of(
                place.withinLimit() ? "handling.move-to" : "handling.move-nowhere",
                limit,
                place.placeName(),
                words.format().celsiusWorst(place.warmestCelsius()));
    }

    /** A warning where a place may get warmer than a lot's heat limit; empty where it does not. */
    public Optional<String> warmer(LotOutlook lot, String placeId) {
        return words.outlook().places().stream()
                .filter(place -> place.place().id().equals(placeId))
                .findFirst()
                .map(place -> words.outlook().destination(placeId, lot))
                .filter(there -> !there.withinLimit())
                .map(there -> words.of(
                        "handling.warmer",
                        there.placeName(),
                        words.format().celsiusWorst(there.warmestCelsius()),
                        words.format().heatLimit(lot.pressure().heatLimitCelsius())));
    }

    /** The lot of a batch whose bottles want most heed. */
    public static LotOutlook gravest(BatchOutlook batch) {
        return batch.verdict().causes().stream()
                .filter(cause -> cause.kind().topic() == Cause.Topic.PRESSURE
                        || cause.kind().topic() == Cause.Topic.FROST)
                .findFirst()
                .flatMap(Cause::lotId)
                .map(batch::lot)
                .filter(lot -> lot.left() > 0)
                .orElseGet(batch::mainLot);
    }

    /** What stands above the cautions. */
    public String title(LotOutlook lot) {
        return words.of(lot.handling().isHeldBack() ? "caution.act.title" : "caution.watch.title");
    }

    /** What to heed with a lot's bottles, the first thing to do first; none where no bottle is in danger. */
    public List<String> cautions(LotOutlook lot) {
        if (lot.verdict().danger() == Alert.CLEAR) {
            return List.of();
        }
        List<String> cautions = new ArrayList<>();
        if (!first(lot).isEmpty()) {
            cautions.add(first(lot));
        }
        for (String key : lot.handling().isHeldBack() ? HELD_BACK : WATCHED) {
            cautions.add(words.of(key));
        }
        return cautions;
    }
}
