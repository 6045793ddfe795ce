package undercroft.outlook.spell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.ageing.ShelfLife;
import undercroft.calc.chill.Frost;
import undercroft.calc.conditioning.CardinalTemperatures;
import undercroft.calc.spell.Spell;
import undercroft.calc.spell.YeastLimits;
import undercroft.catalogue.YeastStrain;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.Handling;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.SpellExposure;
import undercroft.series.Band;
import undercroft.series.Span;
import undercroft.series.Track;

/** What the spells of the places did to the lots that stood there. */
public final class SpellReviews {
    private static final double REFERENCE_CELSIUS = 21;
    private static final double FROST_CELSIUS = 2;
    private static final double STILL_WORKING = 0.97;

    private final Map<String, PlaceClimate> places;
    private final Instant at;

    public SpellReviews(Map<String, PlaceClimate> places, Instant at) {
        this.places = places;
        this.at = at;
    }

    /** A spell by the place it came over and when. */
    private record Where(String placeId, Span span) {}

    /** A lot under a spell; one that left and came back within it is judged by the worse of its stays. */
    private record Felt(BatchOutlook batch, LotOutlook lot, SpellExposure hardest) {}

    /** Newest first; only spells that some bottles felt. */
    public List<SpellReview> of(List<BatchOutlook> batches) {
        Map<Where, List<Felt>> felt = felt(batches);
        List<SpellReview> reviews = new ArrayList<>();
        for (PlaceClimate place : places.values()) {
            for (Spell spell : place.spells()) {
                List<SpellImpact> impacts =
                        felt.getOrDefault(new Where(place.place().id(), spell.span()), List.of()).stream()
                                .filter(each -> concerns(each.batch(), each.lot(), spell))
                                .map(each -> impact(each, place, spell))
                                .toList();
                if (!impacts.isEmpty()) {
                    reviews.add(new SpellReview(
                            place.place(),
                            Instant.ofEpochSecond(spell.span().fromInclusive()),
                            Instant.ofEpochSecond(spell.span().untilExclusive()),
                            spell.peakCelsius(),
                            spell.kind() == Spell.Kind.WARM,
                            spell.certain(),
                            impacts));
                }
            }
        }
        reviews.sort(Comparator.comparing(SpellReview::from).reversed());
        return reviews;
    }

    private static Map<Where, List<Felt>> felt(List<BatchOutlook> batches) {
        Map<Where, List<Felt>> felt = new HashMap<>();
        for (BatchOutlook batch : batches) {
            for (LotOutlook lot : batch.lots()) {
                Map<Where, SpellExposure> hardest = new HashMap<>();
                lot.exposures()
                        .forEach(exposure -> hardest.merge(
                                new Where(exposure.placeId(), exposure.spell()), exposure, SpellReviews::harder));
                hardest.forEach((where, exposure) ->
                        felt.computeIfAbsent(where, each -> new ArrayList<>()).add(new Felt(batch, lot, exposure)));
            }
        }
        return felt;
    }

    private static SpellExposure harder(SpellExposure one, SpellExposure other) {
        return other.peakGaugeBar().high() > one.peakGaugeBar().high() ? other : one;
    }

    /** Cool weather matters only to yeast still at work, and a yeast's limit only to its own beer. */
    private static boolean concerns(BatchOutlook batch, LotOutlook lot, Spell spell) {
        YeastLimits limits = YeastLimits.of(batch.batch().yeast().strain());
        boolean limit = spell.cause() == Spell.Cause.LIMIT;
        if (spell.kind() == Spell.Kind.WARM) {
            return !limit || spell.peakCelsius() > limits.warmCelsius();
        }
        boolean stall = limit && spell.baselineCelsius() > 0;
        if (stall && spell.peakCelsius() > limits.stallCelsius()) {
            return false;
        }
        return (spell.peakCelsius() <= FROST_CELSIUS && !stall) || wasWorking(lot, spell);
    }

    private static boolean wasWorking(LotOutlook lot, Spell spell) {
        Band trajectory = lot.carbonation().trajectory();
        int before = Math.max(0, trajectory.indexAtOrBefore(spell.span().fromInclusive()));
        return trajectory.medianAt(before)
                < STILL_WORKING * lot.carbonation().atEnd().median();
    }

    private SpellImpact impact(Felt felt, PlaceClimate place, Spell spell) {
        BatchOutlook batch = felt.batch();
        LotOutlook lot = felt.lot();
        SpellExposure exposure = felt.hardest();
        long from = exposure.stay().fromInclusive();
        long until = exposure.stay().untilExclusive();
        Track bottles = place.bottles();
        double shelf = ShelfLife.spellCost(
                        bottles,
                        from,
                        until,
                        spell.baselineCelsius(),
                        batch.batch().fillingMethod())
                .median();
        double gained =
                conditioningGained(batch.batch().yeast().strain(), bottles, from, until, spell.baselineCelsius());
        SpellImpact.Advice advice = advice(spell, lot, exposure);
        return new SpellImpact(
                batch.id(), batch.batch().name(), lot.id(), exposure, shelf, gained, alert(advice, spell, lot), advice);
    }

    private SpellImpact.Advice advice(Spell spell, LotOutlook lot, SpellExposure exposure) {
        if (lot.left() == 0) {
            return SpellImpact.Advice.GONE;
        }
        if (spell.kind() == Spell.Kind.COLD) {
            return lot.frost().limits().at(spell.peakCelsius()) == Frost.State.NONE
                    ? SpellImpact.Advice.NONE
                    : SpellImpact.Advice.LOOK_FOR_LIFTED_CAPS;
        }
        if (exposure.hoursOverWorkingPressure() > 0 || exposure.mayHaveBeenFull()) {
            return over(spell, lot.handling());
        }
        return exposure.peakGaugeBar().high() > lot.pressure().cautionBar()
                ? SpellImpact.Advice.KEEP_COOLER
                : SpellImpact.Advice.NONE;
    }

    /** What is to be done first is the lot's, whatever spell led to it. */
    private SpellImpact.Advice over(Spell spell, Handling handling) {
        return switch (handling) {
            case COOL_WHERE_IT_STANDS -> SpellImpact.Advice.COOL_BEFORE_TOUCHING;
            case OPEN_COLD -> SpellImpact.Advice.OPEN_COLD;
            case THAW_IN_THE_COLD -> SpellImpact.Advice.LOOK_FOR_LIFTED_CAPS;
            case NONE, MOVE_NOW ->
                at.getEpochSecond() < spell.span().untilExclusive()
                        ? SpellImpact.Advice.COOL_BEFORE_TOUCHING
                        : SpellImpact.Advice.DRINK_FIRST;
        };
    }

    /** The lot's own verdict; a warm spell with readings missing may have been warmer, and is worth watching at least. */
    private static Alert alert(SpellImpact.Advice advice, Spell spell, LotOutlook lot) {
        Alert unknown = spell.kind() == Spell.Kind.WARM && !spell.certain() ? Alert.WATCH : Alert.CLEAR;
        return switch (advice) {
            case COOL_BEFORE_TOUCHING, OPEN_COLD, DRINK_FIRST, KEEP_COOLER ->
                lot.verdict().alert(Cause.Topic.PRESSURE).or(unknown);
            case LOOK_FOR_LIFTED_CAPS -> lot.verdict().danger();
            case NONE -> unknown;
            case GONE -> Alert.CLEAR;
        };
    }

    private static double conditioningGained(YeastStrain strain, Track bottles, long from, long until, double usual) {
        CardinalTemperatures cardinal =
                new CardinalTemperatures(strain.minimumCelsius(), strain.optimumCelsius(), strain.maximumCelsius());
        double reference = cardinal.share(REFERENCE_CELSIUS);
        double sum = 0;
        for (int i = bottles.indexAt(from); i < bottles.indexAt(until); i++) {
            sum += cardinal.share(bottles.valueAt(i)) - cardinal.share(usual);
        }
        return sum / reference * bottles.stepSeconds() / 86_400;
    }
}
