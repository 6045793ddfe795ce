package undercroft.outlook;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.CoolingMedium;
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
import undercroft.cellar.Serving;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;

/** An invented cellar in Vienna with a room of 20 °C, a fridge of 4 °C, and ales that are ready. */
public final class ServingShelf {
    public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    public static final Instant CAPPED = Instant.parse("2026-01-10T12:00:00Z");

    private ServingShelf() {}

    public static Cellar cellar(Batch... batches) {
        return Cellar.empty("Vienna, \"Tor 3\"; hinten", ZONE)
                .withPlaces(
                        List.of(place("room", "Room", 20), place("fridge", "Fridge", 4), place("cold", "Ice house", 1)))
                .withBatches(List.of(batches));
    }

    private static Place place(String id, String name, double celsius) {
        return new Place(
                id, name, new TemperatureSource.FixedGuess(celsius, 0), 2, LightSetting.usual(LightPlace.DARK));
    }

    public static Batch ale(String id, Flocculation flocculation, int bottles) {
        return ale(id, flocculation, bottles, "room", CAPPED);
    }

    public static Batch ale(String id, Flocculation flocculation, int bottles, String placeId, Instant capped) {
        Lot lot = new Lot(
                "box",
                "longneck-330",
                GlassColour.AMBER,
                bottles,
                330,
                false,
                List.of(new Stay(placeId, capped, Cover.CLOSED_BOX)),
                List.of());
        return new Batch(
                id,
                "Ale, " + id,
                new Beer(BeerStyle.PALE_ALE, 5, 25, 0, 12, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, flocculation, false),
                new Priming(
                        bottles * 0.33,
                        List.of(new SugarDose("dextrose", bottles * 0.33 * 6)),
                        OptionalDouble.empty(),
                        false),
                FillingMethod.CAREFUL,
                Optional.of(capped),
                List.of(lot),
                List.of(),
                "");
    }

    public static Serving serving(String id, String batchId, int bottles, Instant at) {
        return new Serving(id, batchId, bottles, at, "fridge", OptionalDouble.empty(), "");
    }

    public static Serving serving(String batchId, Instant at, CoolingMedium coolingMedium) {
        return new Serving("only", batchId, 4, at, "fridge", coolingMedium, OptionalDouble.empty(), "");
    }

    public static CellarOutlook outlook(Cellar cellar, Instant at) {
        return Outlooks.of(cellar, Map.of(), at);
    }

    /** A moment on the cellar's wall clock, like {@code 2026-04-18T18:00}. */
    public static Instant local(String moment) {
        return LocalDateTime.parse(moment).atZone(ZONE).toInstant();
    }
}
