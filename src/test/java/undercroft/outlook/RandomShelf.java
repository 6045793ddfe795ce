package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Packaging;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.series.TimeSeries;

/** A cellar by chance, with what can go wrong in one: hot weeks and frost, too much sugar, bursts, odd readings, worn glass. */
public final class RandomShelf {
    public static final Instant NOW = OutlookSamples.NOW;
    private static final long HOUR = 3600;
    private static final int LOGGED_DAYS = 60;

    private final SplittableRandom random;

    private RandomShelf(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** The same seed makes the same shelf. */
    public static CellarOutlook outlook(long seed) {
        RandomShelf shelf = new RandomShelf(seed);
        Cellar cellar = shelf.cellar();
        return Outlooks.of(cellar, Map.of("loft", shelf.log()), NOW);
    }

    private Cellar cellar() {
        Cellar cellar = Cellar.empty("Shelf " + random.nextInt(1000), ZoneOffset.UTC)
                .withPlace(place("loft", new TemperatureSource.Logged()))
                .withPlace(place("shed", new TemperatureSource.FixedGuess(within(-12, 38), within(0.5, 4))));
        int batches = 1 + random.nextInt(2);
        for (int i = 0; i < batches; i++) {
            cellar = cellar.withBatch(batch("batch-" + i));
        }
        return cellar;
    }

    private Place place(String id, TemperatureSource source) {
        return new Place(id, id, source, within(0.5, 12), LightSetting.usual(one(LightPlace.values())));
    }

    private TimeSeries log() {
        double mean = within(4, 30);
        double swing = within(0, 6);
        long hotFrom = random.nextInt(LOGGED_DAYS * 24);
        double hotter = random.nextBoolean() ? within(0, 16) : 0;
        TimeSeries.Builder log = new TimeSeries.Builder();
        long from = NOW.getEpochSecond() - LOGGED_DAYS * 24 * HOUR;
        for (long hour = 0; hour < LOGGED_DAYS * 24; hour++) {
            double spell = hour >= hotFrom && hour < hotFrom + 120 ? hotter : 0;
            log.add(from + hour * HOUR, mean + swing * Math.sin(hour / 24.0 * 2 * Math.PI) + spell);
        }
        return log.build();
    }

    private Batch batch(String id) {
        long ageHours = 1L + random.nextInt(24 * (random.nextBoolean() ? 40 : 300));
        Instant capped = NOW.minus(Duration.ofHours(ageHours));
        List<Lot> lots = new ArrayList<>();
        double litres = 0;
        int wanted = 1 + random.nextInt(2);
        for (int i = 0; i < wanted; i++) {
            Lot lot = lot("lot-" + i, capped, ageHours);
            lots.add(lot);
            litres += lot.count() * lot.fillMillilitres() / 1000;
        }
        double grams = within(0, random.nextInt(4) == 0 ? 16 : 8) * litres;
        return new Batch(
                id,
                id,
                new Beer(
                        one(BeerStyle.values()),
                        within(2, 10),
                        within(0, 80),
                        0,
                        within(4, 80),
                        within(8, 24),
                        OptionalDouble.of(1 + within(0.004, 0.020)),
                        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(1 + within(0.004, 0.016))),
                new Yeast(
                        one(YeastStrain.values()),
                        one(YeastState.values()),
                        one(Flocculation.values()),
                        random.nextInt(8) == 0),
                new Priming(litres, List.of(new SugarDose("dextrose", grams)), OptionalDouble.empty(), false),
                Packaging.of(one(FillingMethod.values())),
                Optional.of(capped),
                lots,
                readings(lots, capped, ageHours),
                "",
                Optional.empty(),
                false);
    }

    private Lot lot(String id, Instant capped, long ageHours) {
        BottleType type = Bottles.STANDARD.get(random.nextInt(Bottles.STANDARD.size()));
        int count = 1 + random.nextInt(60);
        List<Draw> draws = new ArrayList<>();
        int left = count;
        int times = random.nextInt(3);
        for (int i = 0; i < times && left > 0; i++) {
            int taken = 1 + random.nextInt(Math.max(1, left / (random.nextInt(3) + 1)));
            boolean burst = random.nextInt(4) == 0;
            draws.add(new Draw(
                    after(capped, ageHours),
                    taken,
                    burst ? Draw.Fate.BURST : Draw.Fate.OPENED,
                    "",
                    burst && random.nextBoolean() ? Optional.of(one(BurstCause.values())) : Optional.empty()));
            left -= taken;
        }
        String first = random.nextBoolean() ? "loft" : "shed";
        Lot lot = new Lot(
                id,
                type.id(),
                type.colour(),
                count,
                type.fillMillilitres(),
                random.nextInt(4) == 0,
                List.of(new Stay(first, capped, one(Cover.values()))),
                draws);
        return random.nextInt(4) == 0
                ? lot.movedTo(first.equals("loft") ? "shed" : "loft", after(capped, ageHours), one(Cover.values()))
                : lot;
    }

    private List<Reading> readings(List<Lot> lots, Instant capped, long ageHours) {
        List<Reading> readings = new ArrayList<>();
        int wanted = random.nextInt(3);
        for (int i = 0; i < wanted; i++) {
            Instant at = after(capped, ageHours);
            String lot = lots.get(random.nextInt(lots.size())).id();
            readings.add(
                    switch (random.nextInt(4)) {
                        case 0 -> new Reading.Gauge(at, lot, "gauge", within(0, 6));
                        case 1 -> new Reading.Squeeze(at, lot, one(BottleFeel.values()));
                        case 2 -> new Reading.Opened(at, lot, one(PerceivedCarbonation.values()));
                        default -> new Reading.Density(at, 1 + within(0.002, 0.020));
                    });
        }
        return readings;
    }

    private Instant after(Instant capped, long ageHours) {
        return capped.plus(Duration.ofMinutes(1 + random.nextLong(Math.max(1, ageHours * 60 - 1))));
    }

    private double within(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @SafeVarargs
    private <T> T one(T... all) {
        return all[random.nextInt(all.length)];
    }
}
