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
import undercroft.outlook.Wording;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;

/**
 * Which batch to pour on a day: what is likely ready and enough, and of that first what should not wait. The weights are
 * assumptions; they only order what is ready, and nothing unready overtakes what is.
 */
public final class ServingChoices {
    private static final double PAST_BEST_BEFORE = 0.6;
    private static final double ENDS_SOON = 0.4;
    private static final double STRUCK = 0.4;
    private static final double NEAR_LIMIT = 0.4;
    private static final double WARM_SPELLED = 0.2;
    private static final double KEEPING_USED = 0.3;
    private static final Duration SPELL_MEMORY = Duration.ofDays(90);
    private static final int SOON_DAYS = 30;
    private static final double NOTICED_DOSE = 0.5;
    private static final double NEAR = 0.9;
    private static final double LEAST_CHANCE = 0.05;

    private final Cellar cellar;
    private final List<BatchOutlook> batches;
    private final List<SpellReview> spells;
    private final Instant at;
    private final Instant when;
    private final int bottles;
    private final Wording words;

    /**
     * What is there to choose from.
     *
     * @param at the instant looked from
     * @param when it is to be poured
     * @param bottles wanted, 1 or more
     */
    public ServingChoices(
            Cellar cellar,
            List<BatchOutlook> batches,
            List<SpellReview> spells,
            Instant at,
            Instant when,
            int bottles) {
        this.cellar = cellar;
        this.batches = batches;
        this.spells = spells;
        this.at = at;
        this.when = when;
        this.bottles = bottles;
        this.words = new Wording(cellar.zone(), cellar.settings().units(), at);
    }

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
        List<String> reasons = new ArrayList<>();
        reasons.add(
                probability < LEAST_CHANCE
                        ? "not ready by then"
                        : Wording.percent(probability) + " likely ready by then");
        double haste = haste(batch, reasons);
        if (free >= bottles) {
            reasons.add(Wording.bottles(free) + (promised > 0 ? " free, " + promised + " promised already" : ""));
        } else {
            reasons.add("only " + Wording.bottles(free) + (promised > 0 ? " free" : ""));
        }
        double share = Math.min(1, (double) free / bottles);
        boolean heldBack = batch.verdict().has(Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE);
        if (heldBack) {
            reasons.add("may be over what its bottles bear: cool it in its closed box first");
        }
        double score = probability * share * (1 + haste) * (heldBack ? 0.5 : 1);
        return new ServingChoice(batch.id(), batch.batch().name(), probability, free, free >= bottles, score, reasons);
    }

    /** How little it should wait, 0 or more, with the reasons told. */
    private double haste(BatchOutlook batch, List<String> reasons) {
        double haste = keeping(batch, reasons);
        LotOutlook brightest = batch.brightestLot();
        if (brightest.light().dose().median() >= NOTICED_DOSE) {
            haste += STRUCK;
            reasons.add("light has got at it (" + brightest.light().words() + "), it gets no better");
        }
        PressureOutlook pressure = batch.limitingLot().pressure();
        if (pressure.peakAhead().high() > NEAR * pressure.workingPressureBar()) {
            haste += NEAR_LIMIT;
            reasons.add("near its limit: may reach "
                    + words.bar(pressure.peakAhead().high()) + " of " + words.bar(pressure.workingPressureBar()));
        }
        double cost = spells.stream()
                .filter(spell -> spell.warm() && spell.until().isAfter(at.minus(SPELL_MEMORY)))
                .flatMap(spell -> spell.impacts().stream())
                .filter(impact -> impact.batchId().equals(batch.id()))
                .mapToDouble(SpellImpact::shelfDaysCost)
                .sum();
        if (cost >= 1) {
            haste += WARM_SPELLED;
            reasons.add("warm spells cost it " + Wording.number(cost, 0) + " keeping days");
        }
        return haste;
    }

    private double keeping(BatchOutlook batch, List<String> reasons) {
        AgeingOutlook ageing = batch.oldestLot().ageing();
        double used = ageing.daysUsed().median() / ageing.budgetDays().median();
        if (used > 1) {
            reasons.add("tired: past its keeping time");
            return PAST_BEST_BEFORE + KEEPING_USED;
        }
        LocalDate day = when.atZone(words.zone()).toLocalDate();
        if (ageing.bestBefore().isPresent()
                && ChronoUnit.DAYS.between(day, ageing.bestBefore().get()) < SOON_DAYS) {
            reasons.add("best before " + words.day(ageing.bestBefore().get()));
            return ENDS_SOON + KEEPING_USED * used;
        }
        return KEEPING_USED * used;
    }
}
