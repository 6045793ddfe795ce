package undercroft.outlook.lot;

import java.time.LocalDate;
import java.util.Optional;
import undercroft.quantity.Interval;

/**
 * Shelf life used, in days at 20 °C.
 *
 * @param bestBefore early, median and late date on which the budget is used up where the bottles stand; empty when it is
 *     more than ten years away
 */
public record AgeingOutlook(
        Interval daysUsed,
        Interval budgetDays,
        Optional<LocalDate> earliestBestBefore,
        Optional<LocalDate> bestBefore,
        Optional<LocalDate> latestBestBefore) {
    /** Whether the budget is more likely used up than not. */
    public boolean isPastBestBefore() {
        return daysUsed.median() > budgetDays.median();
    }
}
