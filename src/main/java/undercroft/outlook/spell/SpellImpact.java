package undercroft.outlook.spell;

import java.time.Instant;
import undercroft.outlook.lot.Alert;
import undercroft.quantity.Interval;

/**
 * What a spell did to a batch, told for its hardest pressed lot.
 *
 * @param since from when that lot was in the spell
 * @param until until when it was
 * @param hoursOverWorking hours in which the 95 % pressure was above the limit
 * @param memoryBeforeBar all pressure borne until the spell as one that acts for 60 seconds
 * @param memoryAfterBar the same after it
 * @param mayHaveBeenFull whether warmth may have swollen the beer until it filled the bottle
 * @param shelfDaysCost days at 20 °C used beyond what the usual temperature would have used
 * @param carbonationDaysGained reference days (21 °C) of conditioning gained
 * @param verdict in words, with what to do first
 */
public record SpellImpact(
        String batchId,
        String batchName,
        String lotId,
        Instant since,
        Instant until,
        Interval peakBarGauge,
        double hoursOverWorking,
        Interval memoryBeforeBar,
        Interval memoryAfterBar,
        boolean mayHaveBeenFull,
        double shelfDaysCost,
        double carbonationDaysGained,
        Alert alert,
        SpellReview.Advice advice,
        String verdict) {}
