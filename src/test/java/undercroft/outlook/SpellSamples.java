package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.LongToDoubleFunction;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.series.TimeSeries;

/** One batch of ale in a logged room, with a fridge beside it. */
public final class SpellSamples {
    public static final Instant CAPPED = Instant.parse("2026-05-01T12:00:00Z");
    public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");

    private SpellSamples() {}

    public static Instant day(double days) {
        return CAPPED.plus(Duration.ofMinutes(Math.round(days * 1440)));
    }

    public static Cellar cellar(double sugarGrams, String placeId) {
        return cellar(sugarGrams, placeId, YeastStrain.ALE);
    }

    public static Cellar cellar(double sugarGrams, String placeId, YeastStrain strain) {
        Lot lot = new Lot(
                "box",
                "longneck-330",
                GlassColour.AMBER,
                50,
                330,
                false,
                List.of(new Stay(placeId, CAPPED, Cover.CLOSED_BOX)),
                List.of());
        Batch batch = new Batch(
                "ale",
                "Plain ale",
                new Beer(BeerStyle.PALE_ALE, 5, 25, 0, 12, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(strain, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(19, List.of(new SugarDose("dextrose", sugarGrams)), OptionalDouble.empty(), false),
                FillingMethod.CAREFUL,
                Optional.of(CAPPED),
                List.of(lot),
                List.of(),
                "");
        LightSetting dark = LightSetting.usual(LightPlace.DARK);
        return Cellar.empty("Test", ZONE)
                .withPlaces(List.of(
                        new Place("room", "Room", new TemperatureSource.Logged(), 4, dark),
                        new Place("fridge", "Fridge", new TemperatureSource.FixedGuess(4, 0.5), 2, dark)))
                .withBatch(batch);
    }

    /** Half-hourly air from ten days before capping; the function gets days since capping, NaN leaves a sample out. */
    public static TimeSeries air(double untilDay, LongToDoubleFunction celsius) {
        TimeSeries.Builder air = new TimeSeries.Builder();
        long until = day(untilDay).getEpochSecond();
        for (long time = day(-10).getEpochSecond(); time <= until; time += 1800) {
            double value = celsius.applyAsDouble(time);
            if (!Double.isNaN(value)) {
                air.add(time, value);
            }
        }
        return air.build();
    }

    public static boolean isWithin(long time, double fromDay, double untilDay) {
        return time >= day(fromDay).getEpochSecond() && time < day(untilDay).getEpochSecond();
    }
}
