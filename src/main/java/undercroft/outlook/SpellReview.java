package undercroft.outlook;

import java.time.Instant;
import java.util.List;
import undercroft.cellar.Place;
import undercroft.quantity.Interval;

/** A warm or cold spell of a place, and what it did to the bottles that stood there. */
public record SpellReview(
        Place place, Instant from, Instant until, double peakCelsius, boolean warm, boolean certain, List<Toll> tolls) {
    /**
     * What a spell did to a batch.
     *
     * @param shelfDaysCost days at 20 °C used beyond what the usual temperature would have used
     * @param carbonationDaysGained reference days (21 °C) of conditioning gained
     * @param verdict in words, with what to do first
     */
    public record Toll(
            String batchId,
            String batchName,
            Interval peakBarGauge,
            double hoursOverWorking,
            double shelfDaysCost,
            double carbonationDaysGained,
            Alert alert,
            String verdict) {}
}
