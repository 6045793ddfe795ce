package undercroft.report;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.Settings;
import undercroft.cellar.TemperatureSource;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.quantity.UnitSystem;

/** Shelves at the edge of what can be reported, made from the demo cellar. Each is reckoned once. */
public final class Shelves {
    public static final CellarOutlook DEMO = DemoShelf.outlook();
    public static final CellarOutlook EMPTY = at(Cellar.empty("New", ZoneId.of("Europe/Vienna")));
    public static final CellarOutlook ONLY_PLANNED = at(of("lantern-stout"));
    public static final CellarOutlook NO_TEMPERATURES = at(of("lock-gate-bitter", "bramble-wheat"));
    public static final CellarOutlook NEVER_READY = at(frozen(of("thornfield-mild")));
    public static final CellarOutlook US = at(of("millrace-saison").withSettings(new Settings(UnitSystem.US, 0)));

    public static final String HOSTILE_NAME =
            "<script>alert('x')</script> & \"Ü\" 🍺 \u202Eshalom \u05E9\u05DC\u05D5\u05DD]]>";
    public static final CellarOutlook HOSTILE = at(hostile());

    private Shelves() {}

    public static List<CellarOutlook> all() {
        return List.of(DEMO, EMPTY, ONLY_PLANNED, NO_TEMPERATURES, NEVER_READY, US, HOSTILE);
    }

    private static CellarOutlook at(Cellar cellar) {
        return Outlooks.of(cellar, Map.of(), DemoShelf.NOW);
    }

    private static Cellar of(String... batches) {
        Cellar demo = DemoShelf.cellar();
        return demo.withServings(List.of())
                .withBatches(List.of(batches).stream().map(demo::batch).toList());
    }

    private static Cellar frozen(Cellar cellar) {
        return cellar.withPlaces(cellar.places().stream()
                .map(place -> place.withTemperature(new TemperatureSource.FixedGuess(-1, 0.2)))
                .toList());
    }

    private static Cellar hostile() {
        Cellar cellar = of("millrace-saison", "lantern-stout").withName("Cellar </title><b>" + HOSTILE_NAME);
        return cellar.withBatches(
                        cellar.batches().stream().map(Shelves::hostile).toList())
                .withPlaces(cellar.places().stream().map(Shelves::hostile).toList());
    }

    private static Batch hostile(Batch batch) {
        return new Batch(
                batch.id(),
                batch.id() + HOSTILE_NAME,
                batch.beer(),
                batch.yeast(),
                batch.priming(),
                batch.fillingMethod(),
                batch.cappedAt(),
                batch.lots(),
                batch.readings(),
                "</p></article><img src=x onerror=\"steal()\"> " + HOSTILE_NAME + "\u0007\uD800");
    }

    private static Place hostile(Place place) {
        return new Place(place.id(), place.id() + HOSTILE_NAME, place.temperature(), place.lagHours(), place.light());
    }
}
