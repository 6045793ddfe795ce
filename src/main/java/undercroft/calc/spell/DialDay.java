package undercroft.calc.spell;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import undercroft.series.TimeSeries;

/**
 * The hours of a day of which only the lowest and the highest temperature are known, as a maximum-minimum thermometer or a
 * weather forecast tells them: one wave, coldest at three in the night, warmest at three in the afternoon (common
 * practice, no source).
 */
public final class DialDay {
    private static final double WARMEST_HOUR = 15;

    private DialDay() {}

    /**
     * One value at every full hour of a local day: 24, or 23 and 25 when clocks change.
     *
     * @param lowCelsius the day's lowest, °C
     * @param highCelsius its highest, °C; not below {@code lowCelsius}
     * @param zone of the wall clock
     * @throws IllegalArgumentException when the lowest is above the highest or one is not a number
     */
    public static TimeSeries hours(LocalDate date, double lowCelsius, double highCelsius, ZoneId zone) {
        if (!(lowCelsius <= highCelsius)) {
            throw new IllegalArgumentException("the lowest temperature is not above the highest");
        }
        double mean = (lowCelsius + highCelsius) / 2;
        double amplitude = (highCelsius - lowCelsius) / 2;
        TimeSeries.Builder hours = new TimeSeries.Builder();
        long until = date.plusDays(1).atStartOfDay(zone).toEpochSecond();
        for (long time = date.atStartOfDay(zone).toEpochSecond(); time < until; time += 3600) {
            double hour = Instant.ofEpochSecond(time).atZone(zone).toLocalTime().toSecondOfDay() / 3600.0;
            hours.add(time, mean + amplitude * Math.cos(2 * Math.PI * (hour - WARMEST_HOUR) / 24));
        }
        return hours.build();
    }
}
