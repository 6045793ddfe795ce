package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.BottlingPlan;
import undercroft.bottling.Capping;
import undercroft.bottling.Checklist;
import undercroft.bottling.Step;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
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
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.quantity.Phrase;
import undercroft.quantity.UnitSystem;
import undercroft.wording.DoseLine;
import undercroft.wording.English;
import undercroft.wording.QuantityFormat;

class WorksheetTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 14);
    private static final Instant CAPPED = Instant.parse("2026-11-14T15:00:00Z");
    private static final String NASTY = "<script>alert('Stout & \"Porter\"')</script>";
    private static final Place STAIRS = new Place(
            "stairs", "Stairs", new TemperatureSource.FixedGuess(19, 1), 6, LightSetting.usual(LightPlace.DARK));

    private static Batch planned() {
        FillingPlan plan = FillingPlan.draft(20, 2.4)
                .withShares(new FillingPlan.Shares(21, 1, 5))
                .withBottles(List.of(
                        new BottleStock("returnable-500", GlassColour.AMBER, false, 24),
                        new BottleStock("longneck-330", GlassColour.GREEN, true, 20),
                        new BottleStock("pet-500", GlassColour.PET_CLEAR, false, 1)))
                .withGravities(
                        List.of(new DatedGravity(DAY.minusDays(3), 1.010), new DatedGravity(DAY.minusDays(1), 1.010)));
        Beer beer = new Beer(BeerStyle.PALE_ALE, 5, 30, 0, 15, 20, OptionalDouble.empty(), OptionalDouble.of(1.010));
        Yeast yeast = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false);
        return Batch.planned("stout", NASTY, beer, yeast, plan);
    }

    private static Cellar cellar(Batch batch) {
        return Cellar.empty("Home", ZoneId.of("UTC")).withPlace(STAIRS).withBatch(batch);
    }

    private static BottlingDay day() {
        return BottlingDay.of(BottlingPlan.from(cellar(planned()), planned(), DAY));
    }

    private static void assertWellFormed(String html) {
        byte[] markup = html.replace("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8);
        assertDoesNotThrow(() ->
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(markup)));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theSheetCarriesEveryStepAndEveryFigureOfTheDose(UnitSystem units) {
        QuantityFormat words = English.in(units);
        String html = Worksheet.of("Stout", day(), words, DAY);
        assertWellFormed(html);
        for (Step step : Checklist.of(day()).steps()) {
            assertTrue(html.contains(WorksheetHtml.escaped(words.of(step.words()))), step.id());
        }
        for (DoseLine line : DoseLine.of(day().sugar().dose(), words)) {
            assertTrue(html.contains(WorksheetHtml.escaped(line.value())), line.label());
        }
        for (Phrase note : day().notes()) {
            assertTrue(html.contains(WorksheetHtml.escaped(words.of(note))), note.key());
        }
        assertTrue(html.contains("@page{size:A4"));
        assertTrue(html.contains("14 November 2026"));
    }

    @Test
    void namesCannotBreakOutOfThePage() {
        String html = Worksheet.of(NASTY, day(), English.in(UnitSystem.METRIC), DAY);
        assertWellFormed(html);
        assertFalse(html.contains("<script"));
        assertWellFormed(Worksheet.of("a\u0000b\ud800c\ufffe", day(), English.in(UnitSystem.METRIC), DAY));
    }

    @Test
    void everyCrateGetsALabelWithItsDates() {
        BottlingDay day = day();
        Batch capped = Capping.of(planned(), day, Capping.Done.asPlanned(day, CAPPED, "stairs", Cover.CLOSED_BOX))
                .batch();
        BatchOutlook outlook = Outlooks.of(cellar(capped), Map.of(), CAPPED.plusSeconds(60))
                .batches()
                .get(0);
        List<CrateLabel> labels = CrateLabel.of(outlook, 20, ZoneId.of("UTC"), UnitSystem.METRIC);
        int crates =
                capped.lots().stream().mapToInt(lot -> (lot.count() + 19) / 20).sum();
        assertEquals(crates, labels.size());
        assertEquals(DAY, labels.get(0).bottled());
        assertTrue(labels.get(0).firstTaste().orElseThrow().isAfter(DAY));
        assertTrue(labels.get(0).bestBefore().orElseThrow().isAfter(DAY.plusDays(60)));
        assertTrue(labels.get(0).heatLimit().startsWith("never above"));
        String page = CrateLabel.page(labels);
        assertWellFormed(page);
        assertFalse(page.contains("<script"));
        assertEquals(crates, page.split("class=\"label\"", -1).length - 1);
    }

    @Test
    void aLabelWithoutDatesInSightSaysSo() {
        CrateLabel label = new CrateLabel("Ale", "12 × bottles", DAY, Optional.empty(), "none", Optional.empty());
        String page = CrateLabel.page(List.of(label));
        assertTrue(page.contains("not in sight"));
        assertTrue(page.contains("more than ten years"));
    }
}
