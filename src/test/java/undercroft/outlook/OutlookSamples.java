package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.cellar.Serving;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.LotOutlook.Progress;
import undercroft.outlook.lot.Stage;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.outlook.task.Task;
import undercroft.quantity.Interval;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/** An invented shelf with one batch of every sort, and its outlook made by hand. */
public final class OutlookSamples {
    public static final Instant NOW = Instant.parse("2026-11-25T18:00:00Z");
    private static final Place LOFT = place("loft", "Loft", LightPlace.DARK);
    private static final Place CUPBOARD = place("cupboard", "Stair cupboard", LightPlace.DIM_CELLAR);
    private static final Place SILL = place("sill", "Kitchen window", LightPlace.WINDOW_SHADE);
    private static final Place FRIDGE = place("fridge", "Fridge", LightPlace.DARK);

    private OutlookSamples() {}

    private static Place place(String id, String name, LightPlace light) {
        return new Place(id, name, new TemperatureSource.Logged(), 6, LightSetting.usual(light));
    }

    /** Ages are days at {@link #NOW}; an outlook before a batch was capped shows it just capped. */
    private static SampleBatch batch(Instant at, String id, String name, double ageDays) {
        return new SampleBatch(at, id, name, ageDays);
    }

    private static List<SampleBatch> batches(Instant at) {
        Instant read = NOW.minus(Duration.ofDays(3));
        return List.of(
                batch(at, "beacon", "Beacon Tripel", 41)
                        .lot("loft", "longneck-330", GlassColour.AMBER, 24, 5)
                        .lot("loft", "sparkling-750", GlassColour.GREEN, 6, 0)
                        .carbonation(3.9, 4.6, 12)
                        .is(Stage.CARBONATING, Progress.WORKING, 26)
                        .pressureAlert(Alert.ACT, 24)
                        .says(
                                "Overprimed for these bottles: 4.6 bar in the loft now; cool the box before you touch it."),
                batch(at, "larch", "Larch Honey Ale", 9)
                        .lot("loft", "swingtop-500", GlassColour.AMBER, 22, 0)
                        .carbonation(2.6, 2.9, 8)
                        .is(Stage.CARBONATING, Progress.WORKING, 26)
                        .pressureAlert(Alert.WATCH, 29)
                        .says("Halfway there on its honey; likely ready from 4 to 16 December."),
                batch(at, "quarry", "Quarry Porter", 86)
                        .lot("cupboard", "longneck-330", GlassColour.AMBER, 44, 26)
                        .carbonation(2.3, 2.2, 8)
                        .is(Stage.READY, Progress.DONE, 17.2)
                        .read(new Reading.Gauge(NOW.minus(Duration.ofDays(60)), "lot-1", "gauge bottle", 1.9))
                        .read(new Reading.Squeeze(NOW.minus(Duration.ofDays(52)), "lot-1", BottleFeel.FIRM))
                        .read(new Reading.Opened(read, "lot-1", PerceivedCarbonation.FULL))
                        .says("Ready since 12 November. 18 bottles left, safe in the stair cupboard up to 31 °C."),
                batch(at, "hedge", "Hedge Saison", 16)
                        .lot("cupboard", "returnable-500", GlassColour.AMBER, 24, 0)
                        .carbonation(3.0, 2.9, 6)
                        .is(Stage.CLEARING, Progress.DONE, 17.2)
                        .says("Carbonated and clearing; a first taste is due."),
                batch(at, "gable", "Gable Strong", 30)
                        .lot("cupboard", "longneck-330", GlassColour.AMBER, 12, 0)
                        .carbonation(2.2, 2.0, 25)
                        .is(Stage.CARBONATING, Progress.SLOW, 17.2)
                        .says("Strong and slow: ready some time from 20 January."),
                batch(at, "winter", "Winter Lager", 34)
                        .lot("fridge", "longneck-330", GlassColour.AMBER, 20, 0)
                        .carbonation(2.5, 1.1, 60)
                        .is(Stage.CARBONATING, Progress.STALLED, 4.6)
                        .says("Stalled by the cold; it goes on at 10 °C or more."),
                batch(at, "fenland", "Fenland Wheat", 52)
                        .lot("sill", "sparkling-375", GlassColour.GREEN, 14, 2)
                        .carbonation(3.1, 3.2, 6)
                        .is(Stage.READY, Progress.DONE, 20.5)
                        .light(0.11, Alert.ACT, "lightstruck")
                        .says("Lightstruck at the window; drink it soon or keep it for cooking."),
                batch(at, "summer", "Summer Pale", 140)
                        .lot("fridge", "longneck-330", GlassColour.FLINT, 36, 32)
                        .carbonation(2.4, 1.3, 6)
                        .is(Stage.PAST_BEST_BEFORE, Progress.DONE, 4.6)
                        .light(0.002, Alert.CLEAR, "not noticeable")
                        .says("Past its best since October; 4 bottles left to drink up."),
                batch(at, "heron", "Heron Bitter", 61)
                        .lot("cupboard", "longneck-330", GlassColour.AMBER, 30, 9)
                        .lot("fridge", "longneck-330", GlassColour.AMBER, 6, 2)
                        .carbonation(2.1, 1.9, 7)
                        .is(Stage.READY, Progress.DONE, 17.2)
                        .says("Ready since 26 October; 4 of its 25 bottles are cold."),
                batch(at, "plastic", "Test Batch Stout", 5)
                        .lot("cupboard", "pet-500", GlassColour.PET_CLEAR, 8, 0)
                        .carbonation(2.2, 2.1, 8)
                        .is(Stage.CARBONATING, Progress.WORKING, 17.2)
                        .says("Just begun; likely ready from 8 to 19 December."),
                batch(at, "orchard", "Orchard Sour with a rather long name", 200)
                        .lot("cupboard", "longneck-330", GlassColour.AMBER, 12, 12)
                        .is(Stage.EMPTY, Progress.DONE, 17.2)
                        .says("All 12 bottles are gone; the last one on 20 November."),
                batch(at, "lantern", "Lantern Red", 0)
                        .lot("cupboard", "longneck-330", GlassColour.AMBER, 40, 0)
                        .is(Stage.FILLING, Progress.WORKING, 17.2)
                        .says("Bottling is planned; 40 bottles."));
    }

    public static Cellar cellar() {
        return Cellar.empty("Hillside cellar", ZoneId.of("Europe/London"))
                .withPlaces(List.of(LOFT, CUPBOARD, SILL, FRIDGE))
                .withBatches(batches(NOW).stream().map(SampleBatch::batch).toList());
    }

    /** The outlook of that shelf, as of any later or slightly earlier instant. */
    public static CellarOutlook outlook(Cellar cellar, Instant at) {
        List<Task> tasks = tasks(at);
        return new CellarOutlook(
                at,
                cellar,
                batches(at).stream()
                        .filter(batch -> cellar.batches().stream()
                                .anyMatch(
                                        each -> each.name().equals(batch.batch().name())))
                        .map(batch -> batch.outlook(cellar))
                        .toList(),
                List.of(
                        placeOutlook(LOFT, 26.8, 2.1, true),
                        placeOutlook(CUPBOARD, 17.2, 0.2, true),
                        placeOutlook(SILL, 20.5, -1.4, true),
                        placeOutlook(FRIDGE, 4.6, 0, false)),
                List.of(spell()),
                cellar.batches().isEmpty() ? List.of() : List.of(serving(at)),
                tasks,
                List.of());
    }

    private static PlaceOutlook placeOutlook(Place place, double celsius, double trend, boolean measured) {
        long from = NOW.getEpochSecond() - 200 * 86_400L;
        Track bottles = Track.constant(from, 3600, 300 * 24, celsius);
        return new PlaceOutlook(place, celsius, trend, measured, TimeSeries.empty(), bottles, List.of());
    }

    private static ServingPlan serving(Instant at) {
        Instant saturday = at.plus(Duration.ofDays(3));
        return new ServingPlan(
                new Serving("saturday", "quarry", 6, saturday, "fridge", OptionalDouble.empty(), ""),
                Optional.of(at.plus(Duration.ofDays(2))),
                saturday,
                true,
                "");
    }

    private static SpellReview spell() {
        Instant capped = NOW.minus(Duration.ofDays(86));
        return new SpellReview(
                CUPBOARD,
                capped.plus(Duration.ofDays(20)),
                capped.plus(Duration.ofDays(28)),
                23.4,
                true,
                true,
                List.of(new SpellImpact(
                        "quarry",
                        "Quarry Porter",
                        "lot-1",
                        capped.plus(Duration.ofDays(20)),
                        capped.plus(Duration.ofDays(28)),
                        Interval.of(2.4, 2.6, 2.8),
                        0,
                        Interval.of(1.8, 2.0, 2.2),
                        Interval.of(2.2, 2.4, 2.6),
                        false,
                        6.2,
                        4,
                        Alert.CLEAR,
                        SpellReview.Advice.AS_USUAL,
                        "no harm done")));
    }

    private static List<Task> tasks(Instant at) {
        return List.of(
                new Task(
                        Task.Kind.COOL_BEFORE_TOUCHING,
                        Alert.ACT,
                        at,
                        "beacon",
                        "Cool the Beacon Tripel box before touching it",
                        "4.6 bar now, the bottles are trusted with 4.7"),
                new Task(
                        Task.Kind.COVER_FROM_LIGHT,
                        Alert.ACT,
                        at,
                        "fenland",
                        "Take Fenland Wheat away from the window",
                        "five times the light a taster notices"),
                new Task(
                        Task.Kind.CHILL,
                        Alert.WATCH,
                        at.plus(Duration.ofHours(1)),
                        "quarry",
                        "Chill 6 Quarry Porter",
                        "cold and clear for Saturday 18:00"),
                new Task(
                        Task.Kind.MOVE_WARMER,
                        Alert.WATCH,
                        at.plus(Duration.ofDays(1)),
                        "winter",
                        "Move Winter Lager somewhere warmer",
                        "stalled at 4.6 °C for 20 days"),
                new Task(
                        Task.Kind.FIRST_TASTE,
                        Alert.CLEAR,
                        at,
                        "hedge",
                        "Taste the first Hedge Saison",
                        "95 % carbonated since Monday"));
    }
}
