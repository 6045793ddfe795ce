package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import undercroft.calc.ageing.ShelfLife;
import undercroft.calc.conditioning.CardinalTemperatures;
import undercroft.calc.spell.Spell;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Track;

/** What the spells of the places did to the lots that stood there. */
final class SpellReviews {
    private static final double REFERENCE_CELSIUS = 21;
    private static final double FROST_CELSIUS = 2;
    private static final double STILL_WORKING = 0.97;

    private final Map<String, PlaceClimate> places;
    private final Instant at;
    private final Wording words;

    SpellReviews(Map<String, PlaceClimate> places, Instant at, Wording words) {
        this.places = places;
        this.at = at;
        this.words = words;
    }

    /** Newest first; only spells that some bottles felt. */
    List<SpellReview> of(List<BatchOutlook> batches) {
        List<SpellReview> reviews = new ArrayList<>();
        for (PlaceClimate place : places.values()) {
            for (Spell spell : place.spells()) {
                List<SpellReview.Toll> tolls = tolls(place, spell, batches);
                if (spell.kind() == Spell.Kind.COLD && spell.peakCelsius() > FROST_CELSIUS) {
                    tolls.removeIf(toll -> !wasWorking(batches, toll, spell));
                }
                if (!tolls.isEmpty()) {
                    reviews.add(new SpellReview(
                            place.place(),
                            Instant.ofEpochSecond(spell.span().fromInclusive()),
                            Instant.ofEpochSecond(spell.span().untilExclusive()),
                            spell.peakCelsius(),
                            spell.kind() == Spell.Kind.WARM,
                            spell.certain(),
                            tolls));
                }
            }
        }
        reviews.sort(Comparator.comparing(SpellReview::from).reversed());
        return reviews;
    }

    /** Cool weather is nobody's business but that of yeast still at work. */
    private static boolean wasWorking(List<BatchOutlook> batches, SpellReview.Toll toll, Spell spell) {
        LotOutlook lot = batches.stream()
                .filter(batch -> batch.id().equals(toll.batchId()))
                .findFirst()
                .orElseThrow()
                .mainLot();
        Band course = lot.carbonation().course();
        int before = Math.max(0, course.indexAtOrBefore(spell.span().fromInclusive()));
        return course.medianAt(before)
                < STILL_WORKING * lot.carbonation().atEnd().median();
    }

    private List<SpellReview.Toll> tolls(PlaceClimate place, Spell spell, List<BatchOutlook> batches) {
        List<SpellReview.Toll> tolls = new ArrayList<>();
        for (BatchOutlook batch : batches) {
            SpellReview.Toll worst = null;
            for (LotOutlook lot : batch.lots()) {
                long from = Math.max(spell.span().fromInclusive(), since(lot.lot(), place, spell));
                long until = Math.min(spell.span().untilExclusive(), leaves(lot.lot(), place, from));
                if (from < until && lot.lot().leftAt(Instant.ofEpochSecond(from)) > 0) {
                    SpellReview.Toll toll = toll(batch, lot, place, spell, from, until);
                    if (worst == null
                            || toll.peakBarGauge().high() > worst.peakBarGauge().high()) {
                        worst = toll;
                    }
                }
            }
            if (worst != null) {
                tolls.add(worst);
            }
        }
        tolls.sort(Comparator.comparing(SpellReview.Toll::alert)
                .thenComparingDouble(toll -> toll.peakBarGauge().high())
                .reversed());
        return tolls;
    }

    private static long since(Lot lot, PlaceClimate place, Spell spell) {
        for (int s = lot.stays().size() - 1; s >= 0; s--) {
            Stay stay = lot.stays().get(s);
            if (stay.placeId().equals(place.place().id())
                    && stay.from().getEpochSecond() < spell.span().untilExclusive()) {
                return stay.from().getEpochSecond();
            }
        }
        return Long.MAX_VALUE;
    }

    private static long leaves(Lot lot, PlaceClimate place, long from) {
        boolean there = false;
        for (Stay stay : lot.stays()) {
            if (there && stay.from().getEpochSecond() > from) {
                return stay.from().getEpochSecond();
            }
            there = stay.placeId().equals(place.place().id()) && stay.from().getEpochSecond() <= from;
        }
        return Long.MAX_VALUE;
    }

    private SpellReview.Toll toll(
            BatchOutlook batch, LotOutlook lot, PlaceClimate place, Spell spell, long from, long until) {
        Band course = lot.pressure().course();
        double limit = lot.pressure().limitBar();
        int first = Math.max(0, course.indexAtOrBefore(from));
        int last = Math.max(first, Math.min(course.size() - 1, course.indexAtOrBefore(until)));
        double low = Double.NEGATIVE_INFINITY;
        double median = low;
        double high = low;
        double over = 0;
        for (int i = first; i <= last; i++) {
            low = Math.max(low, course.lowAt(i));
            median = Math.max(median, course.medianAt(i));
            high = Math.max(high, course.highAt(i));
            if (i > first && course.highAt(i) > limit) {
                over += (double) course.timeAt(i) - course.timeAt(i - 1);
            }
        }
        double hours = Math.min(over, (double) until - from) / 3600;
        Interval peak = Interval.of(low, median, high);
        Track bottles = place.bottles();
        double shelf = ShelfLife.spellCost(
                        bottles,
                        from,
                        until,
                        spell.baselineCelsius(),
                        batch.batch().fillHabit())
                .median();
        double gained =
                conditioningGained(batch.batch().yeast().strain(), bottles, from, until, spell.baselineCelsius());
        Alert alert = hours > 0 ? Alert.ACT : high > lot.pressure().cautionBar() ? Alert.WATCH : Alert.CLEAR;
        boolean gone = lot.left() == 0;
        return new SpellReview.Toll(
                batch.id(),
                batch.batch().name(),
                peak,
                hours,
                shelf,
                gained,
                gone ? Alert.CLEAR : alert,
                verdict(spell, lot, alert, peak, hours, shelf, gone));
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

    private String verdict(
            Spell spell, LotOutlook lot, Alert alert, Interval peak, double hours, double shelfDays, boolean gone) {
        if (gone) {
            return "All gone since.";
        }
        if (spell.kind() == Spell.Kind.COLD) {
            return spell.peakCelsius() < 0
                    ? "May have come near freezing: look for lifted caps before moving it; frozen bottles burst."
                    : "Cold only: a pause for the yeast, nothing lost.";
        }
        String days = Wording.fixed(Math.max(0, shelfDays), 0);
        return switch (alert) {
            case ACT -> {
                boolean over = at.getEpochSecond() < spell.span().untilExclusive()
                        || lot.pressure().alert() == Alert.ACT;
                String first = over
                        ? "Leave it in its closed box, cool the whole box, and only then touch it, eyes and hands covered."
                        : "It is cooler now: handle it gently, eyes and hands covered, and drink it first.";
                yield "May have been over its limit for " + Wording.fixed(hours, 0) + " h (up to "
                        + words.bar(peak.high()) + "). " + first;
            }
            case WATCH -> "Near its limit (up to " + words.bar(peak.high()) + ") but not over; keep it cooler. Cost "
                    + days + " keeping days.";
            case CLEAR -> "Well within its limit (up to " + words.bar(peak.high()) + "). Cost " + days
                    + " keeping days.";
        };
    }
}
