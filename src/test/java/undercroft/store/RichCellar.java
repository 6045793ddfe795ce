package undercroft.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.LitHours;
import undercroft.cellar.Lot;
import undercroft.cellar.Origin;
import undercroft.cellar.Packaging;
import undercroft.cellar.Place;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.PressureUnit;
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

/** A cellar in which every kind of thing occurs, and what a folder holds. */
public final class RichCellar {
    static final Instant CAPPED = Instant.parse("2026-01-10T15:00:00Z");
    public static final Cellar CELLAR = cellar();

    private RichCellar() {}

    static Path folderWith(Path folder, Cellar cellar) throws IOException {
        Files.createDirectories(folder);
        Files.write(
                folder.resolve("cellar.json"), CellarJson.of(cellar, "a test").bytes());
        return folder;
    }

    public static String json() {
        return new String(CellarJson.of(CELLAR, "a test").bytes(), StandardCharsets.UTF_8);
    }

    /** Every file under the folder with its text, in order of the names; the lock left out. */
    static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString();
                if (!name.equals("cellar.lock")) {
                    contents.put(name, Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        }
        return contents;
    }

    private static Cellar cellar() {
        return new Cellar(
                "Under the stairs",
                ZoneId.of("Europe/Vienna"),
                new Settings(
                        UnitSystem.US,
                        410.5,
                        Optional.of("https://cellar.example/shelf/"),
                        Optional.of(Instant.parse("2025-01-31T08:00:00Z"))),
                List.of(
                        new Place("loft", "Loft", new TemperatureSource.Logged(), 6, light(LightPlace.ROOM_DAY)),
                        new Place(
                                "shed",
                                "Shed",
                                new TemperatureSource.FixedGuess(11.5, 3),
                                8.25,
                                new LightSetting(
                                        LightPlace.DIM_CELLAR,
                                        12.5,
                                        0.25,
                                        true,
                                        Optional.of(new LitHours(LocalTime.of(18, 30), LocalTime.of(6, 0)))),
                                Optional.empty(),
                                Optional.of(new FollowedTopic(
                                        "home/shed/air", "/temperature", "/at", TemperatureUnit.FAHRENHEIT, -25, 55)),
                                OptionalDouble.of(31.5)),
                        new Place(
                                "vault",
                                "Vault",
                                new TemperatureSource.YearlySwing(11, 4.5, MonthDay.of(8, 3), 1.5),
                                12,
                                light(LightPlace.DARK))),
                List.of(pale(), planned()),
                List.of(
                        new Serving(
                                "sunday",
                                "pale",
                                4,
                                at("2026-03-29T16:00:00Z"),
                                "shed",
                                OptionalDouble.of(8),
                                "garden"),
                        new Serving(
                                "easter", "pale", 2, at("2026-04-05T16:00:00Z"), "vault", OptionalDouble.empty(), ""),
                        new Serving(
                                "fridge",
                                "pale",
                                1,
                                at("2026-04-06T16:00:00Z"),
                                Optional.empty(),
                                CoolingMedium.FAN_FRIDGE,
                                OptionalDouble.empty(),
                                "")),
                List.of(new BottleType(
                        "stone-750",
                        "750 mL stoneware",
                        GlassColour.OPAQUE,
                        BottleClass.REFILLABLE,
                        Closure.SWING_TOP,
                        750,
                        781.5,
                        6.5,
                        910,
                        94,
                        OptionalDouble.of(14))),
                List.of(new Sugar(
                        "birch-syrup", "birch syrup", Interval.of(0.25, 0.3, 0.34), "the label", "taste it")));
    }

    private static Batch pale() {
        return new Batch(
                "pale",
                "Pale with \"quotes\" & ümläuts",
                new Beer(
                        BeerStyle.PALE_ALE,
                        4.8,
                        32,
                        0.1,
                        9.5,
                        21.3,
                        OptionalDouble.of(1.0105),
                        true,
                        OptionalDouble.of(1.01)),
                new Yeast(YeastStrain.ALE, YeastState.LONG_COLD, Flocculation.POWDERY, true),
                new Priming(
                        18.9,
                        List.of(new SugarDose("dextrose", 110.5), new SugarDose("birch-syrup", 20)),
                        OptionalDouble.of(2.35),
                        false),
                new Packaging(
                        FillingMethod.CAREFUL,
                        OptionalDouble.of(17.5),
                        4.75,
                        Optional.of(new PrintedLabel(CAPPED, 31.25))),
                Optional.of(CAPPED),
                List.of(
                        new Lot(
                                "brown",
                                "longneck-330",
                                GlassColour.AMBER,
                                40,
                                330,
                                true,
                                List.of(
                                        new Stay("loft", CAPPED, Cover.NONE),
                                        new Stay("shed", at("2026-02-01T09:30:00Z"), Cover.CLOSED_BOX)),
                                List.of(
                                        new Draw(at("2026-02-03T19:00:00Z"), 2, Draw.Fate.OPENED, "soft"),
                                        new Draw(
                                                at("2026-02-10T19:00:00.250Z"),
                                                1,
                                                Draw.Fate.BURST,
                                                "",
                                                Optional.of(BurstCause.OVER_PRIMED)))),
                        new Lot(
                                "stone",
                                "stone-750",
                                GlassColour.OPAQUE,
                                6,
                                752.5,
                                false,
                                List.of(new Stay("vault", CAPPED, Cover.OPEN_CRATE)),
                                List.of(),
                                Optional.of(new FittedGauge(
                                        "dial",
                                        CAPPED,
                                        Optional.of(at("2026-02-20T18:00:00Z")),
                                        Optional.of(new PressureTopic("home/gauge", "/bar", PressureUnit.PSI)))))),
                List.of(
                        new Reading.Gauge(at("2026-01-12T08:00:00Z"), "brown", "gauge 1", 0.85),
                        new Reading.Gauge(
                                at("2026-01-12T20:00:00Z"), "brown", 1.25, new Origin("cap 7", "gauge 1", "")),
                        new Reading.Squeeze(at("2026-01-13T08:00:00Z"), "brown", BottleFeel.FIRM),
                        new Reading.Opened(
                                at("2026-01-20T18:00:00Z"),
                                "stone",
                                PerceivedCarbonation.VERY_LIVELY,
                                new Origin("", "", "Anna")),
                        new Reading.Density(at("2026-01-21T18:00:00Z"), 1.0095, Origin.instrument("short hydrometer"))),
                "first line\nsecond line",
                Optional.empty(),
                true);
    }

    private static Batch planned() {
        return new Batch(
                "next",
                "Next",
                new Beer(BeerStyle.WHEAT, 5, 12, 0, 6, 19, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.WARM_FARMHOUSE, YeastState.FRESH_ADDED, Flocculation.ORDINARY, false),
                new Priming(20, List.of(), OptionalDouble.empty(), true),
                FillingMethod.FOAM_CAPPED,
                Optional.empty(),
                List.of(),
                List.of(),
                "");
    }

    private static LightSetting light(LightPlace kind) {
        return LightSetting.usual(kind);
    }

    static Instant at(String time) {
        return Instant.parse(time);
    }
}
