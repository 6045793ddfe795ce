package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import undercroft.calc.conditioning.Stuck;
import undercroft.calc.gas.ClosedBottle;
import undercroft.cellar.Batch;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.quantity.Carbonation;
import undercroft.series.Track;

/** Finds why a lot may never carbonate as planned: in its beer, in its sugar, in a gauge that stands still. */
record StuckCalculator(Batch batch, Lot lot, Instant at, Track bottles, ClosedBottle bottle, double beerFactor) {
    /** Air in the headspace whose oxygen the yeast has taken, and none of it dissolved. */
    private static final double NITROGEN = 0.79;

    private static final double TRAPPED = 1;
    /** What a gauge reads amiss, bar, and the share of the absolute pressure it may be off (assumed). */
    private static final double GAUGE_BAR = 0.08;

    private static final double GAUGE_SHARE = 0.04;
    /** How far two readings of one gauge on one bottle differ by themselves, bar (assumed). */
    private static final double TREMBLE_BAR = 0.03;

    private static final int HALVINGS = 40;

    StuckOutlook of(CarbonationOutlook carbonation) {
        double dose = carbonation.atEnd().median() - carbonation.residual().median();
        Set<Stuck> reasons = EnumSet.noneOf(Stuck.class);
        double expected = carbonation.atEnd().low() * Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
        List<Stuck.Level> levels = levels();
        boolean arrived = !levels.isEmpty() && levels.get(levels.size() - 1).gramsPerLitre() >= expected;
        if (!arrived) {
            reasons.addAll(Stuck.fromTheStart(
                    batch.yeast().strain(),
                    batch.beer().abvPercent(),
                    Math.max(0, dose * Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME)));
        }
        OptionalLong since = Stuck.stillSince(levels, batch.yeast().strain(), bottles, expected);
        if (since.isPresent()) {
            reasons.add(Stuck.STANDS_STILL);
        }
        return new StuckOutlook(
                reasons,
                since.isPresent() ? Optional.of(Instant.ofEpochSecond(since.getAsLong())) : Optional.empty(),
                plateauSince());
    }

    /** Readings of one gauge share its error, so that only their own tremble stands between them. */
    private Optional<Instant> plateauSince() {
        if (lot.gauge().isEmpty()) {
            return Optional.empty();
        }
        FittedGauge fitted = lot.gauge().get();
        List<Stuck.Level> levels = batch.readings().stream()
                .filter(reading -> !reading.at().isAfter(at))
                .flatMap(reading -> reading instanceof Reading.Gauge gauge && fitted.isOwn(gauge, lot.id())
                        ? Stream.of(gauge)
                        : Stream.empty())
                .sorted(Comparator.comparing(Reading.Gauge::at))
                .map(gauge -> level(gauge, TREMBLE_BAR))
                .toList();
        OptionalLong since = Stuck.stillSince(levels, batch.yeast().strain(), bottles, Double.POSITIVE_INFINITY);
        return since.isPresent() ? Optional.of(Instant.ofEpochSecond(since.getAsLong())) : Optional.empty();
    }

    /** Of the bottle of this lot that was read most often, in order of time. */
    private List<Stuck.Level> levels() {
        Map<String, List<Stuck.Level>> byBottle = new LinkedHashMap<>();
        batch.readings().stream()
                .filter(reading -> !reading.at().isAfter(at))
                .sorted(Comparator.comparing(Reading::at))
                .forEach(reading -> {
                    if (reading instanceof Reading.Gauge gauge && gauge.lotId().equals(lot.id())) {
                        byBottle.computeIfAbsent(gauge.bottle(), name -> new ArrayList<>())
                                .add(level(gauge));
                    }
                });
        return byBottle.values().stream()
                .max(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private Stuck.Level level(Reading.Gauge gauge) {
        return level(gauge, Math.hypot(GAUGE_BAR, GAUGE_SHARE * (Math.max(0, gauge.gaugeBar()) + 1)));
    }

    private Stuck.Level level(Reading.Gauge gauge, double spread) {
        long when = gauge.at().getEpochSecond();
        double celsius = Math.max(-5, Math.min(60, bottles.valueAt(bottles.indexAt(when))));
        double grams = grams(celsius, gauge.gaugeBar());
        return new Stuck.Level(when, grams, Math.max(0.01, grams(celsius, gauge.gaugeBar() + spread) - grams));
    }

    private double grams(double celsius, double gaugeBar) {
        double low = 0;
        double high = ClosedBottle.MOST_GRAMS_PER_LITRE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (bottle.gaugeBar(celsius, middle, beerFactor, NITROGEN, TRAPPED, Double.NaN) > gaugeBar) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }
}
