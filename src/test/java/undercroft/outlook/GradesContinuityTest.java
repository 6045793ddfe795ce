package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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
import undercroft.cellar.Packaging;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Settings;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.UnitSystem;

/**
 * A little more of anything changes a figure a little, and no grade goes from clear to act without watch between. Where two steps
 * differ much, what lies between is looked at ever more closely: a slope shrinks with the step, a jump stays.
 */
class GradesContinuityTest {
    private static final Instant NOW = OutlookSamples.NOW;
    private static final int STEPS = 12;
    private static final int CLOSER = 6;

    /** What is swept, from a usual beer. */
    private enum Swept {
        GRAMS(20, 320),
        LITRES(8, 30),
        ABV(2, 12),
        FILL(300, 340),
        CELSIUS(1, 38),
        ALTITUDE(0, 4000),
        DAYS(1, 120);

        private final double from;
        private final double until;

        Swept(double from, double until) {
            this.from = from;
            this.until = until;
        }
    }

    /** A figure with the largest jump that rounding to whole steps of the clock and to 512 members may make. */
    private enum Figure {
        FINAL_VOLUMES(0.03, lot -> lot.carbonation().atEnd().median()),
        STRONGEST_BAR(0.08, lot -> lot.pressure().strongestBottle().high()),
        PEAK_AHEAD_BAR(0.08, lot -> lot.pressure().peakAhead().high()),
        HEAT_LIMIT_KELVIN(0.8, lot -> Math.max(0, Math.min(60, lot.pressure().heatLimitCelsius()))),
        READY_NOW(0.04, lot -> lot.ready().probabilityNow());

        private final double bound;
        private final ToDoubleFunction<LotOutlook> value;

        Figure(double bound, ToDoubleFunction<LotOutlook> value) {
            this.bound = bound;
            this.value = value;
        }

        private double between(LotOutlook one, LotOutlook other) {
            return Math.abs(value.applyAsDouble(one) - value.applyAsDouble(other));
        }
    }

    private static LotOutlook at(Swept swept, double x) {
        double grams = swept == Swept.GRAMS ? x : 115;
        double litres = swept == Swept.LITRES ? x : 19;
        double abv = swept == Swept.ABV ? x : 5;
        double fill = swept == Swept.FILL ? x : 330;
        double celsius = swept == Swept.CELSIUS ? x : 20;
        double altitude = swept == Swept.ALTITUDE ? x : 0;
        double days = swept == Swept.DAYS ? x : 25;
        Instant capped = NOW.minus(Duration.ofSeconds(Math.round(days * 86_400)));
        Lot lot = new Lot(
                "lot-1",
                "longneck-330",
                GlassColour.AMBER,
                40,
                fill,
                false,
                List.of(new Stay("cupboard", capped, Cover.OPEN_CRATE)),
                List.of());
        Batch batch = new Batch(
                "beer",
                "Beer",
                new Beer(BeerStyle.PALE_ALE, abv, 30, 0, 20, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(litres, List.of(new SugarDose("dextrose", grams)), OptionalDouble.empty(), false),
                Packaging.of(FillingMethod.CAREFUL),
                Optional.of(capped),
                List.of(lot),
                List.of(),
                "",
                Optional.empty(),
                false);
        Cellar cellar = Cellar.empty("Sweep", ZoneOffset.UTC)
                .withSettings(new Settings(UnitSystem.METRIC, altitude))
                .withPlace(new Place(
                        "cupboard",
                        "Cupboard",
                        new TemperatureSource.FixedGuess(celsius, 1),
                        3,
                        LightSetting.usual(LightPlace.DARK)))
                .withBatch(batch);
        return Outlooks.of(cellar, Map.of(), NOW).batch("beer").mainLot();
    }

    private static boolean skipsWatch(LotOutlook one, LotOutlook other) {
        Alert a = one.verdict().alert();
        Alert b = other.verdict().alert();
        return (a == Alert.CLEAR && b == Alert.ACT) || (a == Alert.ACT && b == Alert.CLEAR);
    }

    @ParameterizedTest
    @EnumSource(Swept.class)
    void aLittleMoreChangesLittle(Swept swept) {
        double step = (swept.until - swept.from) / STEPS;
        LotOutlook before = at(swept, swept.from);
        for (int i = 1; i <= STEPS; i++) {
            double x = swept.from + i * step;
            LotOutlook now = at(swept, x);
            for (Figure figure : Figure.values()) {
                if (figure.between(before, now) > figure.bound) {
                    narrow(swept, x - step, x, before, now, figure);
                }
            }
            if (skipsWatch(before, now)) {
                grade(swept, x - step, x, before, now);
            }
            before = now;
        }
    }

    /** Follows the half in which a figure changes more: a slope of this figure becomes small, a jump does not. */
    private static void narrow(
            Swept swept, double from, double until, LotOutlook before, LotOutlook after, Figure figure) {
        double low = from;
        double high = until;
        LotOutlook one = before;
        LotOutlook other = after;
        double first = figure.between(one, other);
        for (int i = 0; i < CLOSER && figure.between(one, other) > figure.bound; i++) {
            double middle = (low + high) / 2;
            LotOutlook between = at(swept, middle);
            if (figure.between(one, between) > figure.between(between, other)) {
                high = middle;
                other = between;
            } else {
                low = middle;
                one = between;
            }
        }
        double left = figure.between(one, other);
        assertTrue(
                left <= figure.bound || left < first / (1 << (CLOSER - 2)),
                figure + " jumps by " + left + " at " + swept + " " + low + " to " + high);
    }

    private static void grade(Swept swept, double from, double until, LotOutlook before, LotOutlook after) {
        double low = from;
        double high = until;
        LotOutlook one = before;
        LotOutlook other = after;
        for (int i = 0; i < 2 * CLOSER && skipsWatch(one, other); i++) {
            double middle = (low + high) / 2;
            LotOutlook between = at(swept, middle);
            if (skipsWatch(one, between)) {
                high = middle;
                other = between;
            } else if (skipsWatch(between, other)) {
                low = middle;
                one = between;
            } else {
                return;
            }
        }
        assertTrue(!skipsWatch(one, other), "from clear to act at " + swept + " " + low + " to " + high);
    }
}
