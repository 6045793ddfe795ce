package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.cellar.Serving;
import undercroft.cellar.TemperatureSource;
import undercroft.series.TimeSeries;

/** An invented shelf with a batch of every sort. */
public final class OutlookSamples {
    public static final Instant NOW = Instant.parse("2026-11-25T18:00:00Z");
    /** The loft has been warming up for three days; a hot week was in the cupboard; a logger was off there. */
    private static final Map<String, TimeSeries> AIR = Map.of(
            "loft", air(day -> day < 4 ? 26.8 - 0.7 * day : 24),
            "cupboard", air(day -> day > 40 && day < 46 ? Double.NaN : day > 58 && day < 66 ? 26 : 17.2),
            "sill", air(day -> 20.5));

    private static final ShelfMemory MEMORY = new ShelfMemory();
    private static final Map<Asked, CellarOutlook> KNOWN = new ConcurrentHashMap<>();

    private record Asked(Cellar cellar, Instant at) {}

    private OutlookSamples() {}

    /** Hourly from 210 days before now; the function gets days before now, NaN leaves a reading out. */
    private static TimeSeries air(DoubleUnaryOperator celsius) {
        TimeSeries.Builder air = new TimeSeries.Builder();
        for (int hour = 210 * 24; hour >= 0; hour--) {
            double value = celsius.applyAsDouble(hour / 24.0);
            if (!Double.isNaN(value)) {
                air.add(NOW.getEpochSecond() - hour * 3600L, value);
            }
        }
        return air.build();
    }

    private static Place place(String id, String name, TemperatureSource source, LightPlace light) {
        return new Place(id, name, source, 6, LightSetting.usual(light));
    }

    private static SampleBatch batch(String id, String name, double ageDays) {
        return new SampleBatch(id, name, ageDays);
    }

    private static List<Batch> batches() {
        return List.of(
                        batch("beacon", "Beacon Tripel", 41)
                                .lot("loft", "longneck-330", GlassColour.AMBER, 24, 5)
                                .lot("loft", "sparkling-750", GlassColour.GREEN, 6, 0)
                                .primed("sucrose", 11),
                        batch("larch", "Larch Honey Ale", 9)
                                .lot("loft", "swingtop-500", GlassColour.AMBER, 22, 0)
                                .primed("honey", 9.4),
                        batch("quarry", "Quarry Porter", 86)
                                .lot("cupboard", "longneck-330", GlassColour.AMBER, 44, 26)
                                .read(new Reading.Gauge(ago(60), "lot-1", "gauge bottle", 1.9))
                                .read(new Reading.Squeeze(ago(52), "lot-1", BottleFeel.FIRM))
                                .read(new Reading.Opened(ago(3), "lot-1", PerceivedCarbonation.FULL))
                                .leftOut(),
                        batch("hedge", "Hedge Saison", 20).lot("cupboard", "returnable-500", GlassColour.AMBER, 24, 0),
                        batch("gable", "Gable Strong", 8)
                                .lot("cupboard", "longneck-330", GlassColour.AMBER, 12, 0)
                                .strong(9),
                        batch("winter", "Winter Lager", 34).lot("fridge", "longneck-330", GlassColour.AMBER, 20, 0),
                        batch("fenland", "Fenland Wheat", 52)
                                .lot("cupboard", "sparkling-375", GlassColour.GREEN, 14, 2)
                                .moved("sill", 0.5),
                        batch("summer", "Summer Pale", 200)
                                .lot("loft", "longneck-330", GlassColour.FLINT, 36, 32)
                                .moved("fridge", 2),
                        batch("heron", "Heron Bitter", 61)
                                .lot("cupboard", "longneck-330", GlassColour.AMBER, 30, 9)
                                .lot("cupboard", "longneck-330", GlassColour.AMBER, 6, 2)
                                .moved("fridge", 20),
                        batch("plastic", "Test Batch Stout", 5).lot("cupboard", "pet-500", GlassColour.PET_CLEAR, 8, 0),
                        batch("orchard", "Orchard Sour with a rather long name", 200)
                                .lot("cupboard", "longneck-330", GlassColour.AMBER, 12, 12),
                        batch("lantern", "Lantern Red", 0)
                                .lot("cupboard", "longneck-330", GlassColour.AMBER, 40, 0)
                                .planned())
                .stream()
                .map(SampleBatch::batch)
                .toList();
    }

    private static Instant ago(int days) {
        return NOW.minus(Duration.ofDays(days));
    }

    public static Cellar cellar() {
        Serving saturday = new Serving("saturday", "quarry", 6, ago(-3), "fridge", OptionalDouble.empty(), "");
        TemperatureSource logged = new TemperatureSource.Logged();
        return Cellar.empty("Hillside cellar", ZoneId.of("Europe/London"))
                .withPlaces(List.of(
                        place("loft", "Loft", logged, LightPlace.DARK),
                        place("cupboard", "Stair cupboard", logged, LightPlace.DARK),
                        place("sill", "Kitchen window", logged, LightPlace.WINDOW_SUN),
                        place("fridge", "Fridge", new TemperatureSource.FixedGuess(4.6, 0.5), LightPlace.DARK)))
                .withBatches(batches())
                .withServings(List.of(saturday));
    }

    /** The outlook of that shelf, or of one like it, as of any instant; made once. */
    public static CellarOutlook outlook(Cellar cellar, Instant at) {
        return KNOWN.computeIfAbsent(
                new Asked(cellar, at), asked -> Outlooks.of(asked.cellar(), AIR, asked.at(), List.of(), MEMORY));
    }
}
