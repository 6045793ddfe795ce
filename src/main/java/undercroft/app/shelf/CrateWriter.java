package undercroft.app.shelf;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.wording.AlertWords;
import undercroft.wording.ShelfWords;

/** Letters the crates of one batch. */
record CrateWriter(CellarOutlook outlook, BatchOutlook batch, ShelfWords words) {
    ShelfPlan.Crate planned() {
        List<Lot> lots = batch.batch().lots();
        int bottles = lots.stream().mapToInt(Lot::count).sum();
        String state = bottles == 0 ? words.nameOf(Stage.FILLING) : words.of("shelf.crate.planned-bottles", bottles);
        return new ShelfPlan.Crate(
                batch.id(),
                batch.id(),
                "",
                batch.batch().name(),
                Stage.FILLING,
                batch.alert(),
                state,
                ShelfPlan.racks(outlook, lots, lots.stream().map(lot -> 0).toList()),
                0,
                0,
                words.of("shelf.crate.planned-sentence", batch.batch().name(), state),
                found("", lots),
                false);
    }

    ShelfPlan.Crate crate(Place place, List<LotOutlook> lots) {
        LotOutlook main = lots.get(0);
        Alert alert = lots.stream().map(lot -> lot.verdict().alert()).reduce(Alert.CLEAR, Alert::or);
        int left = lots.stream().mapToInt(LotOutlook::left).sum();
        long age = batch.batch()
                .cappedAt()
                .map(capped -> Duration.between(capped, outlook.at()).toSeconds())
                .orElse(0L);
        return new ShelfPlan.Crate(
                batch.id() + "@" + place.id(),
                batch.id(),
                main.lot().id(),
                batch.batch().name(),
                main.stage(),
                alert,
                state(main),
                ShelfPlan.racks(
                        outlook,
                        lots.stream().map(LotOutlook::lot).toList(),
                        lots.stream().map(LotOutlook::left).toList()),
                main.carbonation().fractionDone().median(),
                age,
                new AlertWords(words.format().messages())
                        .before(
                                alert,
                                words.of(
                                        "shelf.crate.sentence",
                                        batch.batch().name(),
                                        place.name(),
                                        state(main),
                                        words.of("shelf.crate.left", left))),
                found(place.name(), lots.stream().map(LotOutlook::lot).toList()),
                false);
    }

    private String state(LotOutlook lot) {
        long day = batch.batch().cappedAt().map(words::dayNumber).orElse(0L);
        return switch (lot.stage()) {
            case CARBONATING -> words.of("shelf.crate.day", day, progress(lot));
            case CLEARING -> words.of("shelf.crate.day", day, words.nameOf(lot.stage()));
            case READY ->
                words.of(
                        "shelf.crate.stage",
                        words.nameOf(lot.stage()),
                        words.format().volumes(lot.carbonation().atPresent().median()));
            case EMPTY -> gone();
            case FILLING, PAST_BEST_BEFORE -> words.nameOf(lot.stage());
        };
    }

    /** From capping to the last bottle: what a history tells of it. */
    private String gone() {
        Optional<Instant> last = batch.batch().lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .map(Draw::at)
                .filter(at -> !at.isAfter(outlook.at()))
                .max(Instant::compareTo);
        Instant capped = batch.batch().cappedAt().orElseThrow();
        return words.of("shelf.crate.gone", words.day(capped), words.day(last.orElse(capped)));
    }

    private String found(String place, List<Lot> lots) {
        Batch told = batch.batch();
        Stream<String> bottles = lots.stream()
                .flatMap(lot -> Stream.of(
                        words.name(outlook.cellar().bottleType(lot.bottleTypeId())), words.name(lot.colour())));
        Stream<String> all = Stream.concat(
                Stream.of(
                        told.name(),
                        place,
                        words.nameOf(told.beer().kind()),
                        words.nameOf(batch.stage()),
                        told.notes()),
                bottles);
        return all.collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
    }

    private String progress(LotOutlook lot) {
        return switch (lot.progress()) {
            case SLOW -> words.of("shelf.progress.slow");
            case STALLED -> words.of("shelf.progress.stalled");
            case TOO_HOT -> words.of("shelf.progress.too-hot");
            case WORKING, DONE ->
                words.format().volumes(lot.carbonation().atPresent().median());
        };
    }
}
