package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.cellar.Settings;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.lot.Learned;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.UnitSystem;

/** What one batch of a shelf teaches another, end to end. */
class TeachingTest {
    private static final Instant NOW = OutlookSamples.NOW;
    private static final int[] DAYS = {3, 6, 10, 16, 28};
    private static final double[] SLOW = {0.2, 0.35, 0.6, 1.0, 1.6};
    private static final double[] FAST = {1.2, 1.9, 2.1, 2.1, 2.1};

    private static Batch batch(String id, int ageDays, double... bars) {
        SampleBatch batch = new SampleBatch(id, id, ageDays).lot("cupboard", "longneck-330", GlassColour.AMBER, 40, 0);
        for (int i = 0; i < bars.length; i++) {
            Instant at = NOW.minus(Duration.ofDays(ageDays - DAYS[i]));
            batch.read(new Reading.Gauge(at, "lot-1", "gauge bottle", bars[i]));
        }
        return batch.batch();
    }

    private static Cellar cellar(Batch... batches) {
        return Cellar.empty("Shelf", ZoneOffset.UTC)
                .withPlace(new Place(
                        "cupboard",
                        "Cupboard",
                        new TemperatureSource.FixedGuess(20, 1),
                        3,
                        LightSetting.usual(LightPlace.DARK)))
                .withBatches(Arrays.asList(batches));
    }

    private static CellarOutlook outlook(Cellar cellar) {
        return Outlooks.of(cellar, Map.of(), NOW);
    }

    private static Optional<Learned> learned(Cellar cellar, String id) {
        return outlook(cellar).batch(id).learned();
    }

    private static LotOutlook lot(Cellar cellar, String id) {
        return outlook(cellar).batch(id).mainLot();
    }

    private static double wide(LotOutlook lot) {
        return Duration.between(
                        lot.ready().early().orElseThrow(), lot.ready().late().orElseThrow())
                .toHours();
    }

    @Test
    void aBatchThatWasReadMakesTheDatesOfALaterOneNarrower() {
        LotOutlook untaught = lot(cellar(batch("next", 2)), "next");
        Cellar shelf = cellar(batch("old", 90, FAST), batch("next", 2));
        LotOutlook taught = lot(shelf, "next");
        assertTrue(wide(taught) < 0.85 * wide(untaught), wide(taught) + " h of " + wide(untaught));
        Learned learned = learned(shelf, "next").orElseThrow();
        assertEquals(1, learned.batches());
        assertEquals(DAYS.length, learned.readings());
        assertTrue(learned.timesAsFast().median() > 1, "" + learned);
        Instant alone = Instant.ofEpochSecond(
                Math.round(taught.ready().alone().orElseThrow().median()));
        assertEquals(untaught.ready().median(), Optional.of(alone), "the date without the other stands beside");
    }

    @Test
    void aSlowOneMakesThemLater() {
        Cellar shelf = cellar(batch("old", 90, SLOW), batch("next", 2));
        assertTrue(learned(shelf, "next").orElseThrow().timesAsFast().median() < 1);
        Instant untaught =
                lot(cellar(batch("next", 2)), "next").ready().median().orElseThrow();
        assertTrue(lot(shelf, "next").ready().median().orElseThrow().isAfter(untaught));
    }

    /** Whatever the others taught: a batch nobody has read is never told weaker, or to stand more heat. */
    @Test
    void aBatchThatWasNotReadIsNeverToldWeaker() {
        for (double[] bars : List.of(SLOW, FAST)) {
            for (int age : new int[] {2, 10, 40}) {
                LotOutlook untaught = lot(cellar(batch("next", age)), "next");
                LotOutlook taught = lot(cellar(batch("old", 120, bars), batch("next", age)), "next");
                assertTrue(
                        taught.pressure().heatLimitCelsius()
                                <= untaught.pressure().heatLimitCelsius(),
                        "limit " + taught.pressure().heatLimitCelsius());
                assertTrue(taught.pressure().strongestBottle().high()
                        >= untaught.pressure().strongestBottle().high());
                assertTrue(taught.pressure().peakAhead().high()
                        >= untaught.pressure().peakAhead().high());
            }
        }
    }

    @Test
    void nothingIsLearnedFromWhatWasNotReadOrCameLater() {
        assertEquals(Optional.empty(), learned(cellar(batch("old", 90), batch("next", 2)), "next"));
        assertEquals(Optional.empty(), learned(cellar(batch("old", 90, FAST), batch("older", 100)), "older"));
        assertEquals(Optional.empty(), learned(cellar(batch("old", 90, FAST), batch("twin", 90)), "twin"));
    }

    @Test
    void aBatchCanBeLeftOutAndAllCanBeForgotten() {
        Batch old = batch("old", 90, FAST);
        Batch leftOut = new Batch(
                old.id(),
                old.name(),
                old.beer(),
                old.yeast(),
                old.priming(),
                old.packaging(),
                old.cappedAt(),
                old.lots(),
                old.readings(),
                old.notes(),
                old.plan(),
                true);
        assertEquals(Optional.empty(), learned(cellar(leftOut, batch("next", 2)), "next"));
        Cellar forgetful = cellar(old, batch("next", 2))
                .withSettings(new Settings(UnitSystem.METRIC, 0).learningSince(NOW.minus(Duration.ofDays(30))));
        assertEquals(Optional.empty(), learned(forgetful, "next"));
    }

    @Test
    void aBatchWhoseOwnReadingsSpeakAgainstTheOthersIsToldWithoutThem() {
        Cellar shelf = cellar(
                batch("one", 200, FAST),
                batch("two", 160, FAST),
                batch("three", 120, FAST),
                batch("odd", 60, 0.15, 0.2, 0.25, 0.4, 0.7));
        Learned learned = learned(shelf, "odd").orElseThrow();
        assertTrue(learned.isUnlike(), "" + learned);
        LotOutlook alone = lot(cellar(batch("odd", 60, 0.15, 0.2, 0.25, 0.4, 0.7)), "odd");
        assertEquals(alone.ready().median(), lot(shelf, "odd").ready().median());
        Cellar later = shelf.withBatch(batch("next", 2));
        assertEquals(3, learned(later, "next").orElseThrow().batches(), "the odd one teaches nothing");
    }

    /** A reading of an old batch is worked out again for it and for those that learn from it; a bottle taken is not. */
    @Test
    void whatWasLearnedIsRememberedWhileTheReadingsStay() {
        Cellar shelf = cellar(batch("old", 90, FAST), batch("next", 2));
        ShelfMemory memory = new ShelfMemory();
        CellarOutlook first = Outlooks.of(shelf, Map.of(), NOW, List.of(), memory);
        CellarOutlook second = Outlooks.of(shelf.withName("Other"), Map.of(), NOW, List.of(), memory);
        assertSame(first.batch("next"), second.batch("next"), "the same outlook is handed out again");
    }
}
