package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Closure;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.LitHours;
import undercroft.cellar.Lot;
import undercroft.cellar.Origin;
import undercroft.cellar.Packaging;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.PrintedLabel;
import undercroft.cellar.Reading;
import undercroft.cellar.Serving;
import undercroft.cellar.Settings;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.cellar.Yeast;
import undercroft.quantity.Interval;
import undercroft.quantity.UnitSystem;
import undercroft.store.json.CellarJson;

/** Any valid cellar, with figures of all 53 bits, comes back exactly. */
class RandomCellarsTest {
    private static final ZoneId[] ZONES = {ZoneId.of("UTC"), ZoneId.of("Europe/Vienna"), ZoneId.of("+05:45")};
    private static final String[] NAMES = {"A", "Größe \"7\"", "back\\slash", "tab\there", "\uD83C\uDF7A", "line\nbreak"
    };

    @Property(tries = 300, seed = "20260104")
    void everyCellarComesBackExactly(@ForAll long seed) {
        Cellar cellar = new Grower(seed).cellar();
        byte[] bytes = CellarJson.of(cellar, "a test").bytes();
        CellarJson read = CellarJson.read(bytes, "cellar.json");
        assertEquals(cellar, read.cellar());
        assertArrayEquals(bytes, read.with(read.cellar(), "a test").bytes());
    }

    /** Grows one cellar from a seed. */
    private static final class Grower {
        private final Random random;

        Grower(long seed) {
            random = new Random(seed);
        }

        private double within(double min, double max) {
            return switch (random.nextInt(4)) {
                        case 0 -> Math.max(min, Math.rint(min + 0.5 * (max - min)));
                        case 1 ->
                            Math.max(
                                    min,
                                    Math.min(max, Math.rint(100 * (min + random.nextDouble() * (max - min))) / 100));
                        case 2 -> random.nextBoolean() ? min : max;
                        default -> min + random.nextDouble() * (max - min);
                    }
                    + 0.0;
        }

        private OptionalDouble perhaps(double min, double max) {
            return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(within(min, max));
        }

        @SafeVarargs
        private <T> T one(T... values) {
            return values[random.nextInt(values.length)];
        }

        private <T> T one(List<T> values) {
            return values.get(random.nextInt(values.size()));
        }

        private Instant after(Instant instant) {
            Instant later = instant.plusSeconds(1 + random.nextInt(3_000_000));
            return random.nextInt(5) == 0 ? later.plusNanos(random.nextInt(1_000_000_000)) : later;
        }

        Cellar cellar() {
            List<Place> places = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                places.add(new Place(
                        "place-" + i,
                        one(NAMES),
                        source(),
                        within(0, 120),
                        light(),
                        followed(),
                        topic(),
                        perhaps(-20, 80)));
            }
            List<Batch> batches = new ArrayList<>();
            for (int i = 0; i < random.nextInt(4); i++) {
                batches.add(batch("batch-" + i, places));
            }
            List<Serving> servings = new ArrayList<>();
            for (int i = 0; i < (batches.isEmpty() ? 0 : random.nextInt(3)); i++) {
                servings.add(new Serving(
                        "serving-" + i,
                        one(batches).id(),
                        1 + random.nextInt(20),
                        after(Instant.EPOCH),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(one(places).id()),
                        one(CoolingMedium.values()),
                        perhaps(0, 25),
                        one("", "garden")));
            }
            Settings settings = new Settings(
                    one(UnitSystem.values()),
                    within(-400, 5_000),
                    one(Optional.empty(), Optional.of("http://a.example/")),
                    one(Optional.empty(), Optional.of(Instant.parse("2024-05-01T10:00:00Z"))));
            return new Cellar(one(NAMES), one(ZONES), settings, places, batches, servings, ownBottles(), ownSugars());
        }

        private List<BottleType> ownBottles() {
            double fill = within(50, 10_000);
            BottleType own = new BottleType(
                    one("longneck-330", "own"),
                    one(NAMES),
                    one(GlassColour.values()),
                    one(BottleClass.values()),
                    one(Closure.values()),
                    fill,
                    Math.max(fill + 1, 400),
                    within(0.1, 10),
                    within(5, 5_000),
                    within(30, 250),
                    perhaps(0.5, 40));
            return random.nextBoolean() ? List.of() : List.of(own);
        }

        private List<Sugar> ownSugars() {
            Interval yield = Interval.of(within(0.01, 0.2), within(0.2, 0.3), within(0.3, 0.53));
            return random.nextBoolean() ? List.of() : List.of(new Sugar("own", one(NAMES), yield, one(NAMES), ""));
        }

        private Optional<FollowedLog> followed() {
            return random.nextBoolean()
                    ? Optional.empty()
                    : Optional.of(new FollowedLog(
                            "/logs/" + one(NAMES),
                            "UTF-8",
                            random.nextBoolean() ? ',' : '\t',
                            '.',
                            1,
                            0,
                            0,
                            1,
                            "DAY_FIRST",
                            "CELSIUS",
                            ZoneId.of("Europe/Lisbon")));
        }

        private Optional<FollowedTopic> topic() {
            return random.nextBoolean()
                    ? Optional.empty()
                    : Optional.of(new FollowedTopic(
                            "cellar/" + one("loft", "größe/°C"),
                            one("", "/value/0"),
                            one(TemperatureUnit.values()),
                            within(-60, 0),
                            within(1, 100)));
        }

        private Origin origin(String instrument) {
            return new Origin(one("", "cap 3"), instrument, one("", "Anna"));
        }

        private TemperatureSource source() {
            return switch (random.nextInt(3)) {
                case 0 -> new TemperatureSource.Logged();
                case 1 -> new TemperatureSource.FixedGuess(within(-20, 60), within(0, 20));
                default ->
                    new TemperatureSource.YearlySwing(
                            within(-20, 60),
                            within(0, 30),
                            MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(29)),
                            within(0, 20));
            };
        }

        private LightSetting light() {
            LitHours lit =
                    new LitHours(LocalTime.ofSecondOfDay(random.nextInt(86_400)), LocalTime.of(random.nextInt(24), 0));
            boolean told = random.nextBoolean();
            return new LightSetting(
                    one(LightPlace.values()),
                    within(0, 150_000),
                    within(0, told ? lit.length() : 24),
                    random.nextBoolean(),
                    told ? Optional.of(lit) : Optional.empty());
        }

        private Batch batch(String id, List<Place> places) {
            Instant capped = after(Instant.parse("2020-01-01T00:00:00Z"));
            List<Lot> lots = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                lots.add(lot("lot-" + i, capped, places));
            }
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < random.nextInt(4); i++) {
                readings.add(reading(after(capped), one(lots).id()));
            }
            Beer beer = new Beer(
                    one(BeerStyle.values()),
                    within(0, 20),
                    within(0, 200),
                    within(0, 1),
                    within(1, 200),
                    within(-2, 45),
                    perhaps(0.98, 1.2),
                    random.nextBoolean(),
                    perhaps(0.98, 1.2));
            Yeast yeast = new Yeast(
                    one(YeastStrain.values()),
                    one(YeastState.values()),
                    one(Flocculation.values()),
                    random.nextBoolean());
            Priming priming = new Priming(
                    within(0.1, 2_000),
                    List.of(new SugarDose(one(Sugars.STANDARD).id(), within(0, 20_000))),
                    perhaps(0, 8),
                    random.nextBoolean());
            boolean planned = random.nextInt(4) == 0;
            return new Batch(
                    id,
                    one(NAMES),
                    beer,
                    yeast,
                    priming,
                    new Packaging(
                            one(FillingMethod.values()),
                            perhaps(-2, 45),
                            one(0.0, 9.5),
                            one(
                                    Optional.empty(),
                                    Optional.of(new PrintedLabel(capped, one(30.5, Double.POSITIVE_INFINITY))))),
                    planned ? Optional.empty() : Optional.of(capped),
                    lots,
                    readings,
                    one(NAMES),
                    Optional.empty(),
                    random.nextBoolean());
        }

        private Lot lot(String id, Instant capped, List<Place> places) {
            List<Stay> stays = new ArrayList<>();
            Instant from = capped;
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                stays.add(new Stay(one(places).id(), from, one(Cover.values())));
                from = after(from);
            }
            List<Draw> draws = new ArrayList<>();
            for (int i = 0; i < random.nextInt(3); i++) {
                Draw.Fate fate = one(Draw.Fate.values());
                Optional<BurstCause> cause = fate == Draw.Fate.BURST && random.nextBoolean()
                        ? Optional.of(one(BurstCause.values()))
                        : Optional.empty();
                draws.add(new Draw(after(capped), 1 + random.nextInt(5), fate, one("", "note"), cause));
            }
            BottleType type = one(Bottles.STANDARD);
            double fill = within(100, 340);
            return new Lot(
                    id,
                    type.id(),
                    one(GlassColour.values()),
                    10 + random.nextInt(500),
                    fill,
                    random.nextBoolean(),
                    stays,
                    draws,
                    one(Optional.empty(), Optional.of(new FittedGauge(one("dial", "gauge, left"), capped))));
        }

        private Reading reading(Instant at, String lot) {
            return switch (random.nextInt(4)) {
                case 0 -> new Reading.Gauge(at, lot, within(-0.5, 16), origin(one(NAMES)));
                case 1 -> new Reading.Squeeze(at, lot, one(BottleFeel.values()), origin(""));
                case 2 -> new Reading.Opened(at, lot, one(PerceivedCarbonation.values()), origin(""));
                default -> new Reading.Density(at, within(0.98, 1.2), origin(one("", "long hydrometer")));
            };
        }
    }
}
