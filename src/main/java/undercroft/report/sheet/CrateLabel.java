package undercroft.report.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Batch;
import undercroft.cellar.Priming;
import undercroft.cellar.PrintedLabel;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Check;
import undercroft.wording.QuantityFormat;

/**
 * What is written on a crate, in words. It is of the day of capping, since paper cannot change when a reading does: it
 * carries no alert, and says of which day its heat limit is. That is a later one only where the limit has fallen since.
 *
 * @param bottles how many of which kind, and where they stand
 * @param firstTaste the day it is probably ready, {@code firstTasteRange} the days it may be
 * @param count bottles in the crate, to be crossed off
 * @param made the day it was printed
 * @param link where the batch is found on a published page; empty where none is
 */
record CrateLabel(
        String batch,
        String beer,
        String bottles,
        String firstTaste,
        String firstTasteRange,
        String bestBefore,
        String heatLimit,
        String heatLimitDay,
        String recipe,
        int count,
        String made,
        Optional<String> link) {

    /** Labels for every crate of one capped batch, each lot by itself. */
    static List<CrateLabel> of(
            CellarOutlook atCapping,
            BatchOutlook batch,
            int bottlesInCrate,
            PrintedLabel printed,
            QuantityFormat words) {
        Check.within("bottlesInCrate", bottlesInCrate, 1, 100);
        List<CrateLabel> labels = new ArrayList<>();
        for (LotOutlook lot : batch.lots()) {
            for (int left = lot.left(); left > 0; left -= bottlesInCrate) {
                labels.add(of(atCapping, batch, lot, Math.min(left, bottlesInCrate), printed, words));
            }
        }
        return labels;
    }

    private static CrateLabel of(
            CellarOutlook atCapping,
            BatchOutlook outlook,
            LotOutlook lot,
            int count,
            PrintedLabel printed,
            QuantityFormat words) {
        Batch batch = outlook.batch();
        Stay stay = lot.lot().stays().get(0);
        return new CrateLabel(
                batch.name(),
                words.messages()
                        .capital(words.of(
                                "label.beer",
                                batch.beer().kind(),
                                words.lean(batch.beer().abvPercent(), 1),
                                words.day(words.date(batch.cappedAt().orElseThrow())))),
                words.of(
                        "label.bottles",
                        count,
                        lot.pressure().bottle(),
                        lot.lot().colour(),
                        stay.cover(),
                        atCapping.cellar().place(stay.placeId()).name()),
                lot.ready().median().map(day -> day(day, words)).orElseGet(() -> words.of("label.first-taste.never")),
                range(lot, words),
                lot.ageing().bestBefore().map(words::shortDay).orElseGet(() -> words.of("label.best-before.never")),
                words.heatLimit(printed.heatLimitCelsius()),
                printed.heatLimitCelsius() < outlook.heatLimitLot().pressure().heatLimitCelsius()
                        ? words.of("label.heat-limit.later", day(printed.at(), words))
                        : words.of("label.heat-limit.day"),
                recipe(atCapping, batch, words),
                count,
                day(printed.at(), words),
                atCapping.cellar().settings().addressOf(batch.id()));
    }

    private static String day(Instant instant, QuantityFormat words) {
        return words.shortDay(words.date(instant));
    }

    private static String range(LotOutlook lot, QuantityFormat words) {
        Optional<Instant> early = lot.ready().early();
        Instant seenFrom = lot.ready().median().or(() -> early).orElse(Instant.EPOCH);
        return early.map(first -> lot.ready()
                        .late()
                        .map(last -> words.days(first, last, seenFrom))
                        .orElseGet(() -> words.of("label.first-taste.from", words.day(first, seenFrom))))
                .orElse("");
    }

    /** Sugar, target and gravity, as far as they are known. */
    private static String recipe(CellarOutlook atCapping, Batch batch, QuantityFormat words) {
        Priming priming = batch.priming();
        List<String> parts = new ArrayList<>();
        for (SugarDose dose : priming.doses()) {
            parts.add(words.of(
                    "label.recipe.sugar",
                    words.grams(dose.grams()),
                    atCapping.cellar().sugar(dose.sugarId()),
                    words.litres(priming.beerLitres())));
        }
        priming.targetVolumes()
                .ifPresent(target -> parts.add(words.of("label.recipe.target", words.statedVolumes(target))));
        batch.beer()
                .expectedFinalGravity()
                .ifPresent(gravity -> parts.add(words.of("label.recipe.gravity", words.gravity(gravity))));
        return String.join(" · ", parts);
    }
}
