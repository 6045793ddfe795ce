package undercroft.outlook.lot;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import undercroft.calc.ageing.ShelfLife;
import undercroft.cellar.Batch;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/** The shelf life that a lot has used, and when it ends. */
final class AgeingCalculator {
    private static final double TEN_YEARS = 10 * 365.25 * 86_400;

    private AgeingCalculator() {}

    static AgeingOutlook of(Batch batch, Track bottles, Instant at, ZoneId zone) {
        long capped = batch.cappedAt().orElseThrow().getEpochSecond();
        Interval budget = ShelfLife.keepingBudget(batch.beer().kind());
        Interval used = ShelfLife.daysUsed(bottles, capped, at.getEpochSecond(), batch.fillingMethod());
        Interval ends = ShelfLife.bestBefore(bottles, capped, budget, batch.fillingMethod())
                .epochSeconds();
        return new AgeingOutlook(
                used, budget, date(ends.low(), at, zone), date(ends.median(), at, zone), date(ends.high(), at, zone));
    }

    private static Optional<LocalDate> date(double epochSecond, Instant at, ZoneId zone) {
        if (epochSecond > at.getEpochSecond() + TEN_YEARS) {
            return Optional.empty();
        }
        return Optional.of(
                Instant.ofEpochSecond((long) epochSecond).atZone(zone).toLocalDate());
    }
}
