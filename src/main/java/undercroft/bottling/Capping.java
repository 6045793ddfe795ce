package undercroft.bottling;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.SugarAddition;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Lot;
import undercroft.cellar.Priming;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Mass;
import undercroft.quantity.Phrase;

/**
 * The end of bottling day: the planned batch becomes one that stands on the shelf, with what was really done.
 *
 * @param batch capped, without its plan
 * @param differences what was done otherwise than planned, empty when all went as planned
 */
public record Capping(Batch batch, List<Phrase> differences) {
    private static final double SAME_SHARE = 0.01;
    private static final double SAME_VOLUMES = 0.05;

    /**
     * What was really done.
     *
     * @param cappedAt when the last bottle was closed
     * @param counts bottles capped, one for each kind in the order of the plan; 0 for kinds left out
     * @param primedLitres beer the sugar went into
     * @param sugarGrams sugar as weighed
     */
    public record Done(
            Instant cappedAt,
            String placeId,
            Cover cover,
            FillingMethod fillingMethod,
            List<Integer> counts,
            double primedLitres,
            double sugarGrams) {
        public Done {
            counts = List.copyOf(counts);
            Check.within("primedLitres", primedLitres, 0.1, 2_000, "L");
            Check.within("sugarGrams", sugarGrams, 0, 20_000, "g");
        }

        /** Everything as planned: the figures to start from when asking what was done. */
        public static Done asPlanned(BottlingDay day, Instant cappedAt, String placeId, Cover cover) {
            boolean perBottle = day.plan().filling().wish().perBottle();
            return new Done(
                    cappedAt,
                    placeId,
                    cover,
                    FillingMethod.NOT_TOLD,
                    day.order().rows().stream().map(FillRow::filled).toList(),
                    Math.max(
                            0.1,
                            perBottle ? day.order().filledLitres() : day.order().bottleLitres()),
                    day.sugar().weighGrams());
        }
    }

    public Capping {
        differences = List.copyOf(differences);
    }

    /**
     * Caps a batch.
     *
     * @param planned the batch whose plan the day was made from
     * @throws InvalidInput when no bottle was capped, or more of a kind than were set out
     */
    public static Capping of(Batch planned, BottlingDay day, Done done) {
        List<FillRow> rows = day.order().rows();
        if (done.counts().size() != rows.size()) {
            throw new IllegalArgumentException("counts do not match the plan's bottles");
        }
        Beer beer = planned.beer();
        OptionalDouble gravity = day.plan()
                .lastGravity()
                .map(DatedGravity::specificGravity)
                .map(OptionalDouble::of)
                .orElse(beer.gravityAtBottling());
        Batch capped = new Batch(
                planned.id(),
                planned.name(),
                new Beer(
                        beer.kind(),
                        beer.abvPercent(),
                        beer.bitternessIbu(),
                        beer.reducedHopShare(),
                        beer.colourEbc(),
                        beer.warmestCelsius(),
                        gravity,
                        day.plan()
                                .lastGravity()
                                .map(DatedGravity::includesPriming)
                                .orElse(beer.gravityIncludesPriming()),
                        beer.expectedFinalGravity()),
                planned.yeast(),
                priming(day, done),
                planned.packaging()
                        .withMethod(done.fillingMethod())
                        .withKegged(day.plan().filling().shares().kegLitres()),
                Optional.of(done.cappedAt()),
                lots(rows, done),
                planned.readings(),
                planned.notes(),
                Optional.empty(),
                planned.leaveOutOfLearning());
        return new Capping(capped, differences(day, done));
    }

    private static Priming priming(BottlingDay day, Done done) {
        List<SugarDose> doses =
                done.sugarGrams() > 0 ? List.of(new SugarDose(day.plan().sugar().id(), done.sugarGrams())) : List.of();
        FillingPlan.Wish wish = day.plan().filling().wish();
        return new Priming(done.primedLitres(), doses, OptionalDouble.of(wish.targetVolumes()), wish.perBottle());
    }

    private static List<Lot> lots(List<FillRow> rows, Done done) {
        List<Lot> lots = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            int count = done.counts().get(i);
            FillRow row = rows.get(i);
            if (count < 0 || count > row.available()) {
                throw new InvalidInput("counts[" + i + "]", "bottling.fault.set-out", count, row.available());
            }
            if (count > 0) {
                BottleType bottle = row.bottle();
                int nth = seen.merge(bottle.id(), 1, Integer::sum);
                lots.add(new Lot(
                        nth == 1 ? bottle.id() : bottle.id() + "-" + (char) ('a' + nth - 1),
                        bottle.id(),
                        bottle.colour(),
                        count,
                        bottle.fillMillilitres(),
                        row.scuffed(),
                        List.of(new Stay(done.placeId(), done.cappedAt(), done.cover())),
                        List.of()));
            }
        }
        if (lots.isEmpty()) {
            throw new InvalidInput("counts", "bottling.fault.none-capped");
        }
        return lots;
    }

    private static List<Phrase> differences(BottlingDay day, Done done) {
        List<Phrase> differences = new ArrayList<>();
        for (int i = 0; i < done.counts().size(); i++) {
            FillRow row = day.order().rows().get(i);
            int capped = done.counts().get(i);
            int change = capped - row.filled();
            if (change != 0) {
                String key = change > 0 ? "bottling.difference.more" : "bottling.difference.fewer";
                differences.add(Phrase.of(key, row.bottle(), capped, row.filled(), Math.abs(change)));
            }
        }
        double planned = day.sugar().weighGrams();
        if (Math.abs(done.sugarGrams() - planned) > SAME_SHARE * Math.max(1, planned)) {
            differences.add(
                    Phrase.of("bottling.difference.sugar", Mass.ofGrams(done.sugarGrams()), Mass.ofGrams(planned)));
        }
        double given = addedVolumes(day, done) + day.sugar().dose().residualVolumes();
        double expected = day.sugar().dose().totalVolumes().median();
        if (Math.abs(given - expected) > SAME_VOLUMES) {
            differences.add(Phrase.of(
                    given > expected ? "bottling.difference.stronger" : "bottling.difference.weaker",
                    Carbonation.ofVolumes(given),
                    Carbonation.ofVolumes(expected),
                    Carbonation.ofVolumes(Math.abs(given - expected))));
        }
        return differences;
    }

    private static double addedVolumes(BottlingDay day, Done done) {
        SugarAddition weighed = new SugarAddition(day.plan().sugar(), done.sugarGrams());
        return PrimingYield.of(List.of(weighed), done.primedLitres())
                .expectedVolumes()
                .median();
    }
}
