package undercroft.demo;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.cellar.Settings;
import undercroft.cellar.TemperatureSource;

/** The invented cellar that {@code demo-data} holds; a test keeps folder and code the same. */
final class DemoCellar {
    private DemoCellar() {}

    static Cellar cellar() {
        return new Cellar(
                "Weir House",
                ZoneId.of("Europe/Vienna"),
                Settings.USUAL,
                List.of(
                        place("loft", "Loft", 5, LightPlace.DARK, 36),
                        place("stair-cupboard", "Stair cupboard", 8, LightPlace.DARK, 24.5),
                        place("kitchen-sill", "Kitchen sill", 3, LightPlace.WINDOW_SHADE, 29),
                        place("outhouse", "Outhouse", 6, LightPlace.DIM_CELLAR, 29),
                        place("fridge", "Fridge", 2, LightPlace.DARK, 8)),
                DemoBatches.batches(),
                List.of(
                        new Serving(
                                "saturday-porter",
                                "quarry-porter",
                                6,
                                Instant.parse("2026-11-28T17:00:00Z"),
                                "fridge",
                                OptionalDouble.empty(),
                                "Six to supper"),
                        new Serving(
                                "saturday-wheat",
                                "bramble-wheat",
                                8,
                                Instant.parse("2026-11-28T17:00:00Z"),
                                "fridge",
                                OptionalDouble.of(7),
                                "")),
                List.of(new BottleType(
                        "green-500",
                        "500 mL green swing-top",
                        GlassColour.GREEN,
                        BottleClass.REFILLABLE,
                        Closure.SWING_TOP,
                        500,
                        521,
                        2.5,
                        430,
                        72,
                        OptionalDouble.empty())),
                List.of());
    }

    private static Place place(String id, String name, double lagHours, LightPlace light, double summerMaximum) {
        return new Place(id, name, new TemperatureSource.Logged(), lagHours, LightSetting.usual(light))
                .withSummerMaximum(OptionalDouble.of(summerMaximum));
    }
}
