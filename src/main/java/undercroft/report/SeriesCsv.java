package undercroft.report;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
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
    private static final String END = "\r\n";
    private static final long LONGEST_LOG_STEP_SECONDS = 3 * 3600;

    private SeriesCsv() {}

    /** The file of a capped batch. */
    public static String of(BatchOutlook batch) {
        StringBuilder csv = new StringBuilder(1 << 16);
        csv.append(String.join(",", HEAD)).append(END);
        for (LotOutlook lot : batch.lots()) {
            Band carbonation = lot.carbonation().trajectory();
            for (int i = 0; i < carbonation.size(); i++) {
                line(csv, lot, carbonation.timeAt(i));
            }
        }
        return csv.toString();
    }

    private static void line(StringBuilder csv, LotOutlook lot, long time) {
        csv.append(Instant.ofEpochSecond(time))
                .append(',')
                .append(field(lot.lot().id()));
        levels(csv, lot.carbonation().trajectory(), time, 3);
        levels(csv, lot.pressure().trajectory(), time, 3);
        levels(csv, lot.temperature().bottles(), time, 2);
        csv.append(',').append(number(air(lot.temperature().air(), time), 2));
        csv.append(',')
                .append(number(lot.light().trajectory().interpolated(time), 4))
                .append(END);
    }

    private static void levels(StringBuilder csv, Band band, long time, int decimals) {
        int i = band.indexAtOrBefore(time);
        csv.append(',').append(i < 0 ? "" : number(band.lowAt(i), decimals));
        csv.append(',').append(i < 0 ? "" : number(band.medianAt(i), decimals));
        csv.append(',').append(i < 0 ? "" : number(band.highAt(i), decimals));
    }

    /** Unknown inside a gap of the log. */
    private static double air(TimeSeries air, long time) {
        int i = air.indexAtOrBefore(time);
        boolean gap = i < 0 || (i + 1 < air.size() && air.timeAt(i + 1) - air.timeAt(i) > LONGEST_LOG_STEP_SECONDS);
        return gap ? Double.NaN : air.interpolated(time);
    }

    private static String number(double value, int decimals) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, "%." + decimals + "f", value) : "";
    }

    /** Quoted where RFC 4180 asks for it. */
    static String field(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
