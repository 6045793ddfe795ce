package undercroft.outlook;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import undercroft.calc.learning.BatchSummary;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.outlook.climate.LotClimate;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.lot.BatchCalculator;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.quantity.InvalidInput;

/**
 * All that a batch's outlook is made from: while it is alike, so is the outlook.
 *
 * @param alone the cellar with this batch, its places, bottles and sugars and nothing else
 * @param told the instant the batch is told for, see {@link #told}
 * @param places the climates of its places, by id
 * @param earlier what earlier batches teach, the oldest first
 */
record BatchGrounds(Cellar alone, Instant told, Map<String, PlaceClimate> places, List<BatchSummary> earlier) {
    /** Within so many seconds of the wall clock nothing happens to a bottle that a person could notice. */
    static final long MOMENT_SECONDS = 600;

    static BatchGrounds of(
            Cellar cellar, Batch batch, Map<String, PlaceClimate> climates, Instant at, List<BatchSummary> earlier) {
        return told(cellar, batch, climates, told(batch, at), earlier);
    }

    /** What a batch's lesson for later ones is made from: it stays once the last reading is known. */
    static BatchGrounds ofReadings(Cellar cellar, Batch batch, Map<String, PlaceClimate> climates, Instant at) {
        Instant last = batch.readings().stream()
                .map(Reading::at)
                .filter(each -> !each.isAfter(at))
                .max(Instant::compareTo)
                .orElse(at);
        return told(cellar, batch, climates, last, List.of());
    }

    private static BatchGrounds told(
            Cellar cellar, Batch batch, Map<String, PlaceClimate> climates, Instant told, List<BatchSummary> earlier) {
        Set<String> placeIds = batch.lots().stream()
                .flatMap(lot -> lot.stays().stream())
                .map(Stay::placeId)
                .collect(Collectors.toSet());
        Set<String> bottles = batch.lots().stream().map(Lot::bottleTypeId).collect(Collectors.toSet());
        Set<String> sugars =
                batch.priming().doses().stream().map(SugarDose::sugarId).collect(Collectors.toSet());
        batch.plan().ifPresent(plan -> {
            sugars.add(plan.wish().sugarId());
            plan.bottles().forEach(stock -> bottles.add(stock.bottleTypeId()));
        });
        Cellar alone = new Cellar(
                batch.name(),
                cellar.zone(),
                cellar.settings(),
                cellar.places().stream()
                        .filter(place -> placeIds.contains(place.id()))
                        .toList(),
                List.of(batch),
                List.of(),
                cellar.ownBottles().stream()
                        .filter(type -> bottles.contains(type.id()))
                        .toList(),
                cellar.ownSugars().stream()
                        .filter(sugar -> sugars.contains(sugar.id()))
                        .toList());
        return new BatchGrounds(
                alone, told, placeIds.stream().collect(Collectors.toMap(Function.identity(), climates::get)), earlier);
    }

    /** The last full ten minutes, which a shelf is told for where nothing happened since. */
    static Instant moment(Instant at) {
        return Instant.ofEpochSecond(Math.floorDiv(at.getEpochSecond(), MOMENT_SECONDS) * MOMENT_SECONDS);
    }

    /**
     * The instant a batch is told for when the shelf is looked at: the last full ten minutes, or what happened to it since.
     * Of a batch without a bottle left nothing is to be told any more, so that it stays at the last thing that happened.
     */
    static Instant told(Batch batch, Instant at) {
        Instant last = Stream.of(
                        batch.cappedAt().stream(),
                        batch.lots().stream()
                                .flatMap(lot -> lot.stays().stream())
                                .map(Stay::from),
                        batch.lots().stream()
                                .flatMap(lot -> lot.draws().stream())
                                .map(Draw::at),
                        batch.readings().stream().map(Reading::at))
                .flatMap(Function.identity())
                .filter(each -> !each.isAfter(at))
                .max(Instant::compareTo)
                .orElse(Instant.MIN);
        boolean gone = isCapped(batch, at) && batch.leftAt(at) == 0;
        return gone || last.isAfter(moment(at)) ? last : moment(at);
    }

    private static boolean isCapped(Batch batch, Instant at) {
        return batch.cappedAt().isPresent() && !batch.cappedAt().get().isAfter(at);
    }

    BatchOutlook outlook() {
        return new BatchCalculator(alone, places, told, earlier).outlook(batch());
    }

    /** What the batch teaches of later ones; nothing where it cannot be told. */
    Optional<BatchSummary> summary() {
        try {
            return new BatchCalculator(alone, places, told, List.of()).summary(batch());
        } catch (InvalidInput untold) {
            return Optional.empty();
        }
    }

    /** Whether the other grounds give the same outlook. */
    boolean areAlike(BatchGrounds other) {
        return earlier.equals(other.earlier) && areAlike(other, isGone() ? LotClimate.endOf(told) : Long.MAX_VALUE - 1);
    }

    /** Whether the other grounds give the same lesson. */
    boolean teachAlike(BatchGrounds other) {
        return areAlike(other, LotClimate.endOf(told));
    }

    private boolean areAlike(BatchGrounds other, long until) {
        if (!told.equals(other.told) || !alone.equals(other.alone)) {
            return false;
        }
        if (!isCapped(batch(), told)) {
            return true;
        }
        long from = batch().cappedAt().orElseThrow().getEpochSecond();
        return alone.places().stream()
                .map(Place::id)
                .allMatch(id -> places.get(id).isAlike(other.places.get(id), from, until));
    }

    /** Whether the batch has been drunk up, so that it stays as it is. */
    boolean isGone() {
        return isCapped(batch(), told) && batch().leftAt(told) == 0;
    }

    String batchId() {
        return batch().id();
    }

    private Batch batch() {
        return alone.batches().get(0);
    }
}
