package undercroft.outlook.serving;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;

/**
 * Which batch to serve on a day: what is likely ready and enough, and of that first what should not wait. The weights are
 * assumptions; they only order what is ready, and nothing unready overtakes what is.
 *
 * @param at the instant looked from
 * @param when it is to be served
 * @param bottles wanted, 1 or more
 */
public record ServingChoices(
        Cellar cellar, List<BatchOutlook> batches, List<SpellReview> spells, Instant at, Instant when, int bottles) {
    private static final double PAST_BEST_BEFORE = 0.6;
    private static final double ENDS_SOON = 0.4;
    private static final double STRUCK = 0.4;
    private static final double NEAR_LIMIT = 0.4;
    private static final double WARM_SPELLED = 0.2;
    private static final double SHELF_LIFE_USED = 0.3;
    private static final double HELD_BACK = 0.5;
    private static final Duration SPELL_MEMORY = Duration.ofDays(90);
    private static final int SOON_DAYS = 30;
    private static final double NOTICED_DOSE = 0.5;
    private static final double NEAR = 0.9;

    /** Every batch with bottles, best first; what cannot be ready comes last. */
    public List<ServingChoice> ranked() {
        return batches.stream()
                .filter(batch -> batch.isCapped() && batch.bottlesLeft() > 0)
                .map(this::choice)
                .sorted(Comparator.comparingDouble(ServingChoice::score)
                        .reversed()
                        .thenComparing(ServingChoice::batchId))
                .toList();
    }

    private ServingChoice choice(BatchOutlook batch) {
        int promised = cellar.servings().stream()
                .filter(serving ->
                        serving.batchId().equals(batch.id()) && serving.at().isAfter(at))
                .mapToInt(Serving::bottles)
                .sum();
        int free = Math.max(0, batch.bottlesLeft() - promised);
        double probability = batch.mainLot().ready().probabilityBy(when);
        double cost = shelfDaysCost(batch);
        List<ServingChoice.Reason> reasons = new ArrayList<>();
        double haste = haste(batch, cost, reasons);
        boolean heldBack = batch.lots().stream()
                .anyMatch(lot -> lot.left() > 0 && lot.handling().isHeldBack());
        if (heldBack) {
            reasons.add(ServingChoice.Reason.OVER_WORKING_PRESSURE);
        }
        double share = Math.min(1, (double) free / bottles);
        double score = probability * share * (1 + haste) * (heldBack ? HELD_BACK : 1);
        return new ServingChoice(batch.id(), probability, free, promised, free >= bottles, cost, score, reasons);
    }

    /** How little it should wait, 0 or more, with the reasons told. */
    private double haste(BatchOutlook batch, double cost, List<ServingChoice.Reason> reasons) {
        double haste = keeping(batch.oldestLot().ageing(), reasons);
        if (batch.brightestLot().light().dose().median() >= NOTICED_DOSE) {
            haste += STRUCK;
            reasons.add(ServingChoice.Reason.LIGHT);
        }
        PressureOutlook pressure = batch.limitingLot().pressure();
        if (pressure.peakAhead().high() > NEAR * pressure.workingPressureBar()) {
            haste += NEAR_LIMIT;
            reasons.add(ServingChoice.Reason.NEAR_WORKING_PRESSURE);
        }
        if (cost >= 1) {
            haste += WARM_SPELLED;
            reasons.add(ServingChoice.Reason.WARM_SPELLS);
        }
        return haste;
    }

    private double shelfDaysCost(BatchOutlook batch) {
        return spells.stream()
                .filter(spell -> spell.warm() && spell.until().isAfter(at.minus(SPELL_MEMORY)))
                .flatMap(spell -> spell.worstOfEachBatch().stream())
                .filter(impact -> impact.batchId().equals(batch.id()))
                .mapToDouble(SpellImpact::shelfDaysCost)
                .sum();
    }

    private double keeping(AgeingOutlook ageing, List<ServingChoice.Reason> reasons) {
        double used = ageing.daysUsed().median() / ageing.budgetDays().median();
        if (ageing.isPastBestBefore()) {
            reasons.add(ServingChoice.Reason.PAST_BEST_BEFORE);
            return PAST_BEST_BEFORE + SHELF_LIFE_USED;
        }
        LocalDate day = when.atZone(cellar.zone()).toLocalDate();
        if (ageing.bestBefore().isPresent()
                && ChronoUnit.DAYS.between(day, ageing.bestBefore().get()) < SOON_DAYS) {
            reasons.add(ServingChoice.Reason.BEST_BEFORE_SOON);
            return ENDS_SOON + SHELF_LIFE_USED * used;
        }
        return SHELF_LIFE_USED * used;
    }
}
