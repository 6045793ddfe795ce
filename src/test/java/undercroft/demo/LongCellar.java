package undercroft.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;

/**
 * An invented cellar of any size, to measure with: batches capped evenly over years, each drunk within seven to ten
 * months, every tenth with a move, every third with readings; every place with a log of ten minutes. The same sizes give
 * the same cellar.
 */
public final class LongCellar {
    public static final Instant NOW = Instant.parse("2026-11-21T17:00:00Z");
    private static final double DAY = 86_400;
    private static final long STEP = 600;
    private static final long WARMEST = Instant.parse("2026-07-28T00:00:00Z").getEpochSecond();
    private static final int BOTTLES = 40;

    private final int batches;
    private final int places;
    private final double years;
    private final boolean drunk;

    /**
     * @param drunk whether the old batches are empty; if not, two bottles of each are kept
     */
    public LongCellar(int batches, int places, double years, boolean drunk) {
        this.batches = batches;
        this.places = places;
        this.years = years;
        this.drunk = drunk;
    }

    /** Writes one to a folder: batches, places, years, {@code kept} for a shelf on which no batch was emptied. */
    public static void main(String[] arguments) throws IOException {
        new LongCellar(
                        Integer.parseInt(arguments[1]),
                        Integer.parseInt(arguments[2]),
                        Double.parseDouble(arguments[3]),
                        arguments.length < 5)
                .write(Path.of(arguments[0]));
    }

    public void write(Path folder) {
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        try (CellarStore store = CellarStore.create(folder, cellar(), clock, "undercroft")) {
            temperatures().forEach(store::replaceTemperatures);
        }
    }

    public Cellar cellar() {
        List<Place> all = new ArrayList<>();
        for (int p = 0; p < places; p++) {
            all.add(new Place(
                    placeId(p),
                    "Place " + (p + 1),
                    new TemperatureSource.Logged(),
                    3 + p % 5,
                    LightSetting.usual(p % 4 == 3 ? LightPlace.DIM_CELLAR : LightPlace.DARK)));
        }
        List<Batch> made = new ArrayList<>();
        for (int b = 0; b < batches; b++) {
            made.add(batch(b));
        }
        return Cellar.empty("Long cellar", ZoneId.of("Europe/Vienna"))
                .withPlaces(all)
                .withBatches(made);
    }

    private Batch batch(int b) {
        Random random = new Random(1000 + b);
        double age = years * 365 * (batches - b) / (batches + 1.0);
        Instant capped = ago(age);
        YeastStrain strain = b % 7 == 6 ? YeastStrain.LAGER : YeastStrain.ALE;
        List<Stay> stays = new ArrayList<>(List.of(new Stay(placeId(b % places), capped, Cover.OPEN_CRATE)));
        if (b % 10 == 4 && age > 30) {
            stays.add(new Stay(placeId((b + 1) % places), ago(age - 25), Cover.OPEN_CRATE));
        }
        Lot lot = new Lot(
                "crate",
                b % 5 == 0 ? "returnable-500" : "longneck-330",
                GlassColour.AMBER,
                BOTTLES,
                b % 5 == 0 ? 500 : 330,
                false,
                stays,
                draws(age, 210 + random.nextInt(90)));
        double litres = BOTTLES * (b % 5 == 0 ? 0.5 : 0.33);
        return new Batch(
                "batch-" + b,
                "Batch " + b,
                new Beer(
                        BeerStyle.PALE_ALE,
                        4 + 3 * random.nextDouble(),
                        30,
                        0,
                        12,
                        20,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                new Yeast(strain, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(
                        litres,
                        List.of(new SugarDose("sucrose", litres * (5 + 2 * random.nextDouble()))),
                        OptionalDouble.empty(),
                        false),
                FillingMethod.CAREFUL,
                Optional.of(capped),
                List.of(lot),
                b % 3 == 0 ? readings(age) : List.of(),
                "");
    }

    /** Three bottles at a time, from the fourth week on. */
    private List<Draw> draws(double age, int lastDay) {
        List<Draw> draws = new ArrayList<>();
        int left = drunk ? BOTTLES : BOTTLES - 2;
        for (double day = 28; left > 0 && day < age; day += (lastDay - 28) / 12.0) {
            int count = Math.min(3, left);
            draws.add(new Draw(ago(age - day), count, Draw.Fate.OPENED, ""));
            left -= count;
        }
        return draws;
    }

    private static List<Reading> readings(double age) {
        List<Reading> readings = new ArrayList<>();
        if (age > 6) {
            readings.add(new Reading.Gauge(ago(age - 5), "crate", "gauge bottle", 0.9));
        }
        if (age > 12) {
            readings.add(new Reading.Gauge(ago(age - 11), "crate", "gauge bottle", 1.5));
        }
        if (age > 29) {
            readings.add(new Reading.Opened(ago(age - 28), "crate", PerceivedCarbonation.FULL));
        }
        return readings;
    }

    public Map<String, TimeSeries> temperatures() {
        Map<String, TimeSeries> all = new LinkedHashMap<>();
        for (int p = 0; p < places; p++) {
            all.put(placeId(p), log(p));
        }
        return all;
    }

    /** A room with a year, a day and weather in it; its reading to a tenth. */
    private TimeSeries log(int p) {
        Random random = new Random(50 + p);
        long until = NOW.getEpochSecond();
        long from = until - Math.round(years * 365 * DAY / STEP) * STEP;
        double hold = Math.exp(-STEP / (2.5 * DAY));
        double weather = 0;
        TimeSeries.Builder log = new TimeSeries.Builder();
        for (long t = from; t <= until; t += STEP) {
            weather = hold * weather + 1.2 * Math.sqrt(1 - hold * hold) * random.nextGaussian();
            double season = (2 + p % 5) * Math.cos(2 * Math.PI * (t - WARMEST) / (365.25 * DAY));
            double swing = 1.5 * Math.cos(2 * Math.PI * ((t % DAY) / DAY - 15.0 / 24));
            double celsius = 15 + p % 4 + season + swing + weather + 0.05 * random.nextGaussian();
            log.add(t, Math.round(celsius * 10) / 10.0);
        }
        return log.build();
    }

    private static String placeId(int p) {
        return "place-" + p;
    }

    private static Instant ago(double days) {
        long seconds = NOW.getEpochSecond() - Math.round(days * 24) * 3600;
        return Instant.ofEpochSecond(seconds);
    }
}
