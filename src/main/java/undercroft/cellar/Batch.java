package undercroft.cellar;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * Beer that was bottled in one go.
 *
 * @param cappedAt when the bottles were capped; empty while bottling is planned
 * @param notes anything worth keeping
 * @param plan the draft of bottling day, while it is one
 * @param leaveOutOfLearning true when this batch should teach nothing about the next ones
 */
public record Batch(
        String id,
        String name,
        Beer beer,
        Yeast yeast,
        Priming priming,
        Packaging packaging,
        Optional<Instant> cappedAt,
        List<Lot> lots,
        List<Reading> readings,
        String notes,
        Optional<FillingPlan> plan,
        boolean leaveOutOfLearning)
        implements Listed {
    public Batch {
        Check.id("id", id);
        name = Check.text("name", name);
        lots = List.copyOf(lots);
        readings = List.copyOf(readings);
        notes = notes == null ? "" : notes;
        Set<String> lotIds = new HashSet<>();
        for (int i = 0; i < lots.size(); i++) {
            if (!lotIds.add(lots.get(i).id())) {
                throw new InvalidInput(
                        "lots[" + i + "].id", "cellar.fault.twice", lots.get(i).id());
            }
        }
        if (cappedAt.isPresent() && plan.isPresent()) {
            throw new InvalidInput("plan", "cellar.fault.plan-left");
        }
        if (cappedAt.isPresent()) {
            checkAfterCapping(cappedAt.get(), lots, readings);
        }
        for (int i = 0; i < readings.size(); i++) {
            String lotId = lotOf(readings.get(i));
            if (lotId != null && !lotIds.contains(lotId)) {
                throw new InvalidInput("readings[" + i + "].lot", "cellar.fault.no-lot", lotId);
            }
        }
    }

    /** A batch without a plan of which no more than the filling method is known. */
    public Batch(
            String id,
            String name,
            Beer beer,
            Yeast yeast,
            Priming priming,
            FillingMethod fillingMethod,
            Optional<Instant> cappedAt,
            List<Lot> lots,
            List<Reading> readings,
            String notes) {
        this(id, name, beer, yeast, priming, fillingMethod, cappedAt, lots, readings, notes, Optional.empty());
    }

    /** A batch of which no more than the filling method is known. */
    public Batch(
            String id,
            String name,
            Beer beer,
            Yeast yeast,
            Priming priming,
            FillingMethod fillingMethod,
            Optional<Instant> cappedAt,
            List<Lot> lots,
            List<Reading> readings,
            String notes,
            Optional<FillingPlan> plan) {
        this(id, name, beer, yeast, priming, Packaging.of(fillingMethod), cappedAt, lots, readings, notes, plan, false);
    }

    /** A batch that waits to be bottled, with its plan as a draft. */
    public static Batch planned(String id, String name, Beer beer, Yeast yeast, FillingPlan plan) {
        return new Batch(
                id,
                name,
                beer,
                yeast,
                primingOf(plan),
                FillingMethod.NOT_TOLD,
                Optional.empty(),
                List.of(),
                List.of(),
                "",
                Optional.of(plan));
    }

    /** The priming as far as a draft tells it; the sugar is weighed later. */
    private static Priming primingOf(FillingPlan plan) {
        double litres = Math.max(0.1, plan.shares().bottleLitres());
        FillingPlan.Wish wish = plan.wish();
        return new Priming(litres, List.of(), OptionalDouble.of(wish.targetVolumes()), wish.perBottle());
    }

    public FillingMethod fillingMethod() {
        return packaging.method();
    }

    private static String lotOf(Reading reading) {
        if (reading instanceof Reading.Gauge gauge) {
            return gauge.lotId();
        }
        if (reading instanceof Reading.Squeeze squeeze) {
            return squeeze.lotId();
        }
        return reading instanceof Reading.Opened opened ? opened.lotId() : null;
    }

    private static void checkAfterCapping(Instant capped, List<Lot> lots, List<Reading> readings) {
        if (lots.isEmpty()) {
            throw new InvalidInput("lots", "cellar.fault.no-bottles");
        }
        for (int i = 0; i < lots.size(); i++) {
            if (lots.get(i).stays().get(0).from().isBefore(capped)) {
                throw new InvalidInput("lots[" + i + "].stays[0].from", "cellar.fault.moved-early");
            }
        }
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).at().isBefore(capped)) {
                throw new InvalidInput("readings[" + i + "].at", "cellar.fault.before-capped");
            }
        }
    }

    @Override
    public String label() {
        return name;
    }

    /** Bottles that were left at an instant, over all lots. */
    public int leftAt(Instant instant) {
        return lots.stream().mapToInt(lot -> lot.leftAt(instant)).sum();
    }

    public Lot lot(String lotId) {
        return Listed.find(lots.stream().map(LotEntry::new).toList(), lotId, "lot")
                .lot();
    }

    public Batch withLots(List<Lot> newLots) {
        return new Batch(
                id,
                name,
                beer,
                yeast,
                priming,
                packaging,
                cappedAt,
                newLots,
                readings,
                notes,
                plan,
                leaveOutOfLearning);
    }

    /** The lot with the same id replaced. */
    public Batch withLot(Lot changed) {
        return withLots(lots.stream()
                .map(lot -> lot.id().equals(changed.id()) ? changed : lot)
                .toList());
    }

    public Batch withReadings(List<Reading> newReadings) {
        return new Batch(
                id,
                name,
                beer,
                yeast,
                priming,
                packaging,
                cappedAt,
                lots,
                newReadings,
                notes,
                plan,
                leaveOutOfLearning);
    }

    public Batch withNotes(String newNotes) {
        return new Batch(
                id,
                name,
                beer,
                yeast,
                priming,
                packaging,
                cappedAt,
                lots,
                readings,
                newNotes,
                plan,
                leaveOutOfLearning);
    }

    /** Beer and yeast corrected. */
    public Batch withBeer(Beer newBeer, Yeast newYeast) {
        return new Batch(
                id,
                name,
                newBeer,
                newYeast,
                priming,
                packaging,
                cappedAt,
                lots,
                readings,
                notes,
                plan,
                leaveOutOfLearning);
    }

    /** With its draft changed, and the priming following it. */
    public Batch withPlan(FillingPlan newPlan) {
        return new Batch(
                id,
                name,
                beer,
                yeast,
                primingOf(newPlan),
                packaging,
                cappedAt,
                lots,
                readings,
                notes,
                Optional.of(newPlan),
                leaveOutOfLearning);
    }

    public Batch withPackaging(Packaging newPackaging) {
        return new Batch(
                id,
                name,
                beer,
                yeast,
                priming,
                newPackaging,
                cappedAt,
                lots,
                readings,
                notes,
                plan,
                leaveOutOfLearning);
    }

    public Batch withLeaveOutOfLearning(boolean leaveOut) {
        return new Batch(id, name, beer, yeast, priming, packaging, cappedAt, lots, readings, notes, plan, leaveOut);
    }

    /** Some or all bottles of a lot moved; a part becomes a lot of its own right after the one it came from. */
    public Batch withMove(String lotId, int bottles, String placeId, Instant at, Cover cover) {
        Lot lot = lot(lotId);
        if (at.isBefore(lot.stays().get(lot.stays().size() - 1).from())) {
            throw new InvalidInput("at", "cellar.fault.before-move");
        }
        if (bottles == lot.left()
                && lot.draws().stream().noneMatch(draw -> draw.at().isAfter(at))) {
            return withLot(lot.movedTo(placeId, at, cover));
        }
        List<Lot> changed = new ArrayList<>();
        for (Lot each : lots) {
            if (each.id().equals(lotId)) {
                changed.add(each.without(bottles));
                changed.add(each.part(freeLotId(lotId), bottles).movedTo(placeId, at, cover));
            } else {
                changed.add(each);
            }
        }
        return withLots(changed);
    }

    /** An id for a part of a lot that no lot has yet. */
    public String freeLotId(String lotId) {
        for (int n = 2; ; n++) {
            String candidate = lotId + "-" + n;
            if (lots.stream().noneMatch(lot -> lot.id().equals(candidate))) {
                return candidate;
            }
        }
    }

    private record LotEntry(Lot lot) implements Listed {
        @Override
        public String id() {
            return lot.id();
        }

        @Override
        public String label() {
            return lot.id();
        }
    }
}
