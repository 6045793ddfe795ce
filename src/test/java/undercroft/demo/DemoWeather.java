package undercroft.demo;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import undercroft.series.TimeSeries;

/** Invented temperatures for the demo cellar: a season, a daily swing, weather, sensor noise, one heat wave, one gap. */
final class DemoWeather {
    static final long FROM = Instant.parse("2026-03-01T00:00:00Z").getEpochSecond();
    static final long UNTIL = Instant.parse("2026-11-21T17:00:00Z").getEpochSecond();
    private static final long STEP = 1800;
    private static final double DAY = 86_400;
    private static final long WARMEST = Instant.parse("2026-07-28T00:00:00Z").getEpochSecond();
    private static final long HEAT_FROM = Instant.parse("2026-08-08T06:00:00Z").getEpochSecond();
    private static final long HEAT_UNTIL = Instant.parse("2026-08-15T20:00:00Z").getEpochSecond();
    private static final long GAP_FROM = Instant.parse("2026-10-03T09:00:00Z").getEpochSecond();
    private static final long GAP_UNTIL = Instant.parse("2026-10-06T15:30:00Z").getEpochSecond();

    private DemoWeather() {}

    static Map<String, TimeSeries> temperatures() {
        Map<String, TimeSeries> all = new LinkedHashMap<>();
        all.put("loft", room(new Room(16.5, 7.5, 2.6, 1.5, 8.5, 4), 11, true));
        all.put("stair-cupboard", room(new Room(18.6, 2.0, 0.5, 0.5, 2.2, 30), 12, false));
        all.put("kitchen-sill", room(new Room(20.8, 2.2, 1.4, 0.7, 4.5, 8), 13, false));
        all.put("outhouse", room(new Room(11.8, 8.2, 2.0, 1.6, 5.0, 10), 14, false));
        all.put("fridge", fridge(15));
        return all;
    }

    private record Room(
            double mean, double season, double swing, double weather, double heatWave, double heatLagHours) {}

    private static TimeSeries room(Room room, long seed, boolean withGap) {
        Random random = new Random(seed);
        TimeSeries.Builder series = new TimeSeries.Builder();
        double weather = 0;
        double heat = 0;
        for (long t = FROM; t <= UNTIL; t += STEP) {
            double hold = Math.exp(-STEP / (2.5 * DAY));
            weather = hold * weather + room.weather() * Math.sqrt(1 - hold * hold) * random.nextGaussian();
            double target = t >= HEAT_FROM && t < HEAT_UNTIL ? room.heatWave() : 0;
            heat += (target - heat) * (1 - Math.exp(-STEP / (room.heatLagHours() * 3600)));
            double season = room.season() * Math.cos(2 * Math.PI * (t - WARMEST) / (365.25 * DAY));
            double brightness = 0.65 + 0.35 * Math.cos(2 * Math.PI * (t - WARMEST) / (365.25 * DAY));
            double swing = room.swing() * brightness * Math.cos(2 * Math.PI * ((t % DAY) / DAY - 15.0 / 24));
            double celsius = room.mean() + season + swing + weather + heat + 0.06 * random.nextGaussian();
            if (!withGap || t < GAP_FROM || t >= GAP_UNTIL) {
                series.add(t, Math.round(celsius * 10) / 10.0);
            }
        }
        return series.build();
    }

    private static TimeSeries fridge(long seed) {
        Random random = new Random(seed);
        TimeSeries.Builder series = new TimeSeries.Builder();
        for (long t = FROM; t <= UNTIL; t += STEP) {
            double compressor = 0.7 * Math.sin(2 * Math.PI * t / 5_400.0);
            double door = random.nextInt(60) == 0 ? 2.5 : 0;
            series.add(t, Math.round((4.8 + compressor + door + 0.15 * random.nextGaussian()) * 10) / 10.0);
        }
        return series.build();
    }
}
