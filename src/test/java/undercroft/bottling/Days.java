package undercroft.bottling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Closure;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Sugars;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Yeast;

/** Plans to test with: a finished pale ale at 20 °C by the sea, 20 L in the vessel, a litre lost, unless told otherwise. */
final class Days {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 14);
    static final double SEA_LEVEL_BAR = 1.01325;
    static final Yeast ALE = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false);
    static final Yeast DIASTATIC =
            new Yeast(YeastStrain.WARM_FARMHOUSE, YeastState.ORDINARY, Flocculation.ORDINARY, true);
    static final BottleType ORNAMENTAL = notForPressure("ornament", "ornamental swing-top", Closure.SWING_TOP);
    static final BottleType STILL_WINE = notForPressure("still-wine", "still-wine bottle", Closure.WIRED_CORK);

    private Days() {}

    private static BottleType notForPressure(String id, String label, Closure closure) {
        return new BottleType(
                id,
                label,
                GlassColour.FLINT,
                BottleClass.NOT_FOR_PRESSURE,
                closure,
                750,
                780,
                2,
                500,
                76,
                OptionalDouble.empty());
    }

    static Beer beer(double warmestCelsius, OptionalDouble expectedFinalGravity) {
        return new Beer(BeerStyle.PALE_ALE, 5, 30, 0, 15, warmestCelsius, OptionalDouble.empty(), expectedFinalGravity);
    }

    static FillingPlan plan(double targetVolumes, String sugar, BottleStock... bottles) {
        return FillingPlan.draft(20, targetVolumes)
                .withShares(new FillingPlan.Shares(20, 1, 0))
                .withWish(FillingPlan.Wish.of(targetVolumes, sugar))
                .withBottles(List.of(bottles))
                .withGravities(List.of(
                        new DatedGravity(TODAY.minusDays(3), 1.010), new DatedGravity(TODAY.minusDays(1), 1.010)));
    }

    static BottleStock stock(String bottle, int available) {
        return new BottleStock(bottle, GlassColour.AMBER, false, available);
    }

    static BottlingPlan resolved(FillingPlan filling) {
        return resolved(beer(20, OptionalDouble.of(1.010)), ALE, filling);
    }

    static BottlingPlan resolved(Beer beer, Yeast yeast, FillingPlan filling) {
        List<BottleType> makes = new ArrayList<>(Bottles.STANDARD);
        makes.add(ORNAMENTAL);
        makes.add(STILL_WINE);
        return BottlingPlan.of(beer, yeast, filling, makes, Sugars.STANDARD, SEA_LEVEL_BAR, TODAY);
    }

    static BottlingDay day(FillingPlan filling) {
        return BottlingDay.of(resolved(filling));
    }
}
