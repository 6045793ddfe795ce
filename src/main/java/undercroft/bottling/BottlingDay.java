package undercroft.bottling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import undercroft.calc.gas.PossibleContents;
import undercroft.calc.light.BeerSensitivity;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.catalogue.GlassColour;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.Limit;
import undercroft.quantity.Phrase;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;

/**
 * Everything a bottling day needs, computed from its plan. Pure: the same plan gives the same day.
 *
 * @param order which bottles are filled
 * @param sugar what to weigh
 * @param keg the part that goes to a keg
 * @param pressures one for each kind of bottle that is a pressure bottle, in the plan's order
 * @param unfinished whether to go on, and the volumes at stake
 * @param refusals why the plan must not be carried out as it is; empty when it may
 * @param notes what else should be known
 */
public record BottlingDay(
        BottlingPlan plan,
        FillOrder order,
        SugarPlan sugar,
        Optional<KegPart> keg,
        List<BottlePressure> pressures,
        UnfinishedFermentation unfinished,
        WashPlan wash,
        Supplies supplies,
        List<Phrase> refusals,
        List<Phrase> notes) {
    private static final Set<GlassColour> LET_LIGHT_IN =
            EnumSet.of(GlassColour.FLINT, GlassColour.BLUE, GlassColour.GREEN, GlassColour.PET_CLEAR);
    private static final double HARDLY_SENSITIVE = 0.1;

    public BottlingDay {
        pressures = List.copyOf(pressures);
        refusals = List.copyOf(refusals);
        notes = List.copyOf(notes);
    }

    /** The day that a plan makes. */
    public static BottlingDay of(BottlingPlan plan) {
        FillOrder order = FillOrder.of(plan);
        SugarPlan sugar = SugarPlan.of(plan, order);
        UnfinishedFermentation unfinished =
                UnfinishedFermentation.assess(plan.gravityReadings(), plan.expectedFinal(), plan.today());
        PossibleContents contents = BottleContents.of(plan, sugar.dose(), unfinished);
        HighestTarget target = new HighestTarget(plan, unfinished);
        List<BottlePressure> pressures = new ArrayList<>();
        for (FillRow row : order.rows()) {
            if (row.refusal().isEmpty() && row.available() > 0) {
                pressures.add(BottlePressure.of(plan, row, contents, target));
            }
        }
        Optional<KegPart> keg =
                plan.filling().shares().kegLitres() >= 0.05 ? Optional.of(KegPart.of(plan)) : Optional.empty();
        return new BottlingDay(
                plan,
                order,
                sugar,
                keg,
                pressures,
                unfinished,
                WashPlan.of(plan.filling().wash(), order),
                Supplies.of(plan, order),
                refusals(plan, order, pressures),
                notes(plan, order, sugar));
    }

    /** The bottle with the least room to its limit on a hot day; empty when no bottle may be filled. */
    public Optional<BottlePressure> weakest() {
        return pressures.stream().min(Comparator.comparingDouble(BottlePressure::marginBar));
    }

    /** The highest target that all the bottles set out may hold; empty when none may be filled. */
    public Optional<Double> highestTargetVolumes() {
        return pressures.stream().map(BottlePressure::highestTargetVolumes).min(Comparator.naturalOrder());
    }

    /** The range usual for this kind of beer, volumes of CO2 (common practice, no source). */
    public Interval usualTargetVolumes() {
        return plan.beer().kind().targetVolumes();
    }

    /** True when nothing is refused and the fermentation is not known to go on. */
    public boolean mayGoOn() {
        return refusals.isEmpty() && unfinished.verdict() != UnfinishedFermentation.Verdict.WAIT;
    }

    /** What goes on fermenting; empty when nothing is at stake. */
    public Optional<Phrase> atStake() {
        return unfinished.points() <= 0
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        "bottling.at-stake",
                        Phrase.of(
                                "quantity.volumes",
                                Math.rint(unfinished.extraVolumes().median() * 10) / 10),
                        Math.rint(unfinished.points() * 10) / 10));
    }

    private static List<Phrase> refusals(BottlingPlan plan, FillOrder order, List<BottlePressure> pressures) {
        List<Phrase> refusals = new ArrayList<>();
        for (FillRow row : order.rows()) {
            row.refusal().ifPresent(why -> refusals.add(Phrase.of("bottling.refusal.row", row.bottle(), why)));
        }
        for (BottlePressure pressure : pressures) {
            if (pressure.marginBar() < 0) {
                refusals.add(overTheLimit(plan, pressure));
            }
        }
        return refusals;
    }

    private static Phrase overTheLimit(BottlingPlan plan, BottlePressure pressure) {
        Temperature hot = Temperature.ofCelsius(BottlePressure.CHECKED_CELSIUS);
        Limit limit = new Limit(Pressure.ofBar(pressure.limits().workingPressureBar()));
        double highest = pressure.highestTargetVolumes();
        return highest > 0
                ? Phrase.of(
                        "bottling.refusal.over",
                        pressure.bottle(),
                        Carbonation.ofVolumes(plan.filling().wish().targetVolumes()),
                        hot,
                        limit,
                        new Limit(Carbonation.ofVolumes(highest)))
                : Phrase.of("bottling.refusal.no-target", pressure.bottle(), hot, limit);
    }

    private static List<Phrase> notes(BottlingPlan plan, FillOrder order, SugarPlan sugar) {
        List<Phrase> notes = new ArrayList<>(order.notes());
        notes.addAll(sugar.notes());
        double sensitivity = BeerSensitivity.factor(
                plan.beer().bitternessIbu(),
                plan.beer().reducedHopShare(),
                plan.beer().colourEbc());
        boolean light = order.rows().stream()
                .anyMatch(row ->
                        row.filled() > 0 && LET_LIGHT_IN.contains(row.bottle().colour()));
        if (light && sensitivity > HARDLY_SENSITIVE) {
            notes.add(Phrase.of("bottling.note.light"));
        }
        if (plan.yeast().fermentsDextrins()) {
            notes.add(Phrase.of("bottling.note.diastatic"));
        }
        return notes;
    }
}
