package undercroft.report;

import java.time.Instant;
import java.util.List;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.series.Band;
import undercroft.series.TimeSeries;

/**
 * The courses of a batch as a CSV file (RFC 4180, UTF-8), a line for each lot and instant, past and ahead. Low, median and
 * high are the 5, 50 and 95 % values; a field is empty where nothing is known.
 */
public final class SeriesCsv {
    private static final List<String> HEAD = List.of(
            "time_utc",
            "lot",
            "carbonation_low_vol",
            "carbonation_median_vol",
            "carbonation_high_vol",
            "pressure_low_bar_gauge",
            "pressure_median_bar_gauge",
            "pressure_high_bar_gauge",
            "bottle_low_celsius",
            "bottle_median_celsius",
            "bottle_high_celsius",
            "air_celsius",
            "light_dose");
    private static final long LONGEST_LOG_STEP_SECONDS = 3 * 3600;

    private SeriesCsv() {}

    /** The file of a capped batch. */
    public static String of(BatchOutlook batch) {
        CsvTable table = CsvTable.headed(HEAD);
        for (LotOutlook lot : batch.lots()) {
            Band carbonation = lot.carbonation().trajectory();
            TimeSeries air = lot.temperature().air();
            for (int i = 0; i < carbonation.size(); i++) {
                row(table, lot, air, carbonation.timeAt(i));
            }
        }
        return table.text();
    }

    private static void row(CsvTable table, LotOutlook lot, TimeSeries air, long time) {
        table.text(Instant.ofEpochSecond(time).toString()).text(lot.lot().id());
        levels(table, lot.carbonation().trajectory(), time, 3);
        levels(table, lot.pressure().trajectory(), time, 3);
        levels(table, lot.temperature().bottles(), time, 2);
        table.number(air(air, time), 2);
        table.number(lot.light().trajectory().interpolated(time), 4).endRow();
    }

    private static void levels(CsvTable table, Band band, long time, int decimals) {
        int i = band.indexAtOrBefore(time);
        table.number(i < 0 ? Double.NaN : band.lowAt(i), decimals);
        table.number(i < 0 ? Double.NaN : band.medianAt(i), decimals);
        table.number(i < 0 ? Double.NaN : band.highAt(i), decimals);
    }

    /** Unknown inside a gap of the log. */
    private static double air(TimeSeries air, long time) {
        int i = air.indexAtOrBefore(time);
        boolean gap = i < 0 || (i + 1 < air.size() && air.timeAt(i + 1) - air.timeAt(i) > LONGEST_LOG_STEP_SECONDS);
        return gap ? Double.NaN : air.interpolated(time);
    }
}
