package undercroft.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookSamples;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.plot.Layer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.PointLayer;
import undercroft.plot.SpanLayer;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.mark.Role;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;
import undercroft.wording.ShelfWords;

class BatchPictureTest {
    private static final Instant NOW = OutlookSamples.NOW;
    private final CellarOutlook outlook = OutlookSamples.outlook(OutlookSamples.cellar(), NOW);

    private PlotStack stack(String batchId, UnitSystem units) {
        BatchOutlook batch = outlook.batch(batchId);
        return BatchPicture.of(
                batch,
                batch.mainLot(),
                new ShelfWords(
                        outlook,
                        QuantityFormat.of(
                                Messages.english(), units, outlook.cellar().zone())),
                NOW.minus(Duration.ofDays(90)),
                NOW.plus(Duration.ofDays(60)),
                NOW);
    }

    private static <T extends Layer> List<T> layers(Plot plot, Class<T> kind) {
        return plot.layers().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @Test
    void thePlotsShareOneAxisAndTheOneOfLightIsThereForBottlesThatHadAny() {
        PlotStack stack = stack("quarry", UnitSystem.METRIC);
        List<String> inTheDark =
                List.of("Carbonation, vol", "Pressure, bar gauge", "Temperature, °C, measured for 93 % of the time");
        assertEquals(inTheDark, stack.plots().stream().map(Plot::title).toList());
        List<Plot> lit = stack("fenland", UnitSystem.METRIC).plots();
        assertEquals("Light, 1 is just noticed", lit.get(lit.size() - 1).title());
        assertEquals(NOW.getEpochSecond(), stack.now().orElseThrow());
    }

    @Test
    void aTemperatureNobodyMeasuredIsCalledAGuess() {
        assertEquals(
                "Temperature, °C, a guess: nothing was measured",
                stack("winter", UnitSystem.METRIC).plots().get(2).title());
    }

    @Test
    void usUnitsReachCurvesLimitsAndReadings() {
        Plot metric = stack("quarry", UnitSystem.METRIC).plots().get(1);
        Plot us = stack("quarry", UnitSystem.US).plots().get(1);
        double bar = layers(metric, ThresholdLayer.class).get(0).value();
        double psi = layers(us, ThresholdLayer.class).get(0).value();
        assertEquals(14.5038, psi / bar, 1e-4, "1 bar is 14.5038 psi (NIST SP 811, appendix B)");
        double gauge = layers(us, PointLayer.class).get(0).points().get(0).value();
        assertEquals(1.9 * 14.5038, gauge, 1e-3);
        assertEquals(
                "Temperature, °F, measured for 93 % of the time",
                stack("quarry", UnitSystem.US).plots().get(2).title());
    }

    @Test
    void aSpellIsShownToTheBatchesItTouched() {
        List<SpanLayer> touched =
                layers(stack("quarry", UnitSystem.METRIC).plots().get(2), SpanLayer.class);
        assertTrue(touched.stream().anyMatch(span -> span.label().equals("warm spell, cost 12 days of shelf life")));
        List<SpanLayer> other = layers(stack("gable", UnitSystem.METRIC).plots().get(2), SpanLayer.class);
        assertTrue(other.stream().noneMatch(span -> span.role() == Role.SPELL));
    }

    @Test
    void aStretchWithoutLogIsShownAsAGap() {
        List<SpanLayer> spans =
                layers(stack("quarry", UnitSystem.METRIC).plots().get(2), SpanLayer.class);
        assertTrue(spans.stream()
                .anyMatch(span -> span.role() == Role.GAP && span.spans().size() == 1));
    }

    @Test
    void aHeatLimitFarAboveTheRoomDoesNotFlattenTheTemperatures() {
        List<ThresholdLayer> near =
                layers(stack("beacon", UnitSystem.METRIC).plots().get(2), ThresholdLayer.class);
        assertEquals(
                outlook.batch("beacon").mainLot().pressure().heatLimitCelsius(),
                near.get(0).value());
        List<ThresholdLayer> far =
                layers(stack("winter", UnitSystem.METRIC).plots().get(2), ThresholdLayer.class);
        assertEquals(List.of(), far, "39 °C is far above a fridge");
    }
}
