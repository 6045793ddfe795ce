package undercroft.app.bottling;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.Cellar;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;

/** A cellar with one place and one finished pale ale to be bottled: 19 L to 57 longnecks at 2.2 volumes. */
public final class PlanSamples {
    public static final Instant NOW = Instant.parse("2026-11-21T17:00:00Z");
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 21);

    private PlanSamples() {}

    public static Cellar cellar() {
        FillingPlan plan = FillingPlan.draft(20, 2.2)
                .withShares(new FillingPlan.Shares(20, 1, 0))
                .withBottles(List.of(new BottleStock("longneck-330", GlassColour.AMBER, false, 60)))
                .withGravities(List.of(
                        new DatedGravity(TODAY.minusDays(3), 1.010), new DatedGravity(TODAY.minusDays(1), 1.010)));
        Beer beer = new Beer(BeerStyle.PALE_ALE, 5, 30, 0, 15, 20, OptionalDouble.empty(), OptionalDouble.of(1.010));
        Yeast yeast = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false);
        return Cellar.empty("Test", ZoneOffset.UTC)
                .withPlace(new Place(
                        "cupboard",
                        "Cupboard",
                        new TemperatureSource.Logged(),
                        6,
                        LightSetting.usual(LightPlace.DIM_CELLAR)))
                .withBatch(Batch.planned("pale", "Pale", beer, yeast, plan));
    }

    /** A clock that is moved by hand. */
    public static final class HandClock extends Clock {
        private Instant now = NOW;

        public void forward(Duration by) {
            now = now.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("the test's clock has one zone");
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
