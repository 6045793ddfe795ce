package undercroft.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.BottlingPlan;
import undercroft.bottling.Checklist;
import undercroft.bottling.Step;
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
import undercroft.markup.ParsedPages;
import undercroft.quantity.Phrase;
import undercroft.quantity.UnitSystem;
import undercroft.wording.DoseLine;
import undercroft.wording.English;
import undercroft.wording.QuantityFormat;

class WorksheetTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 14);
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

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void theSheetCarriesEveryStepAndEveryFigureOfTheDose(UnitSystem units) {
        QuantityFormat words = English.in(units);
        String html = Worksheet.of("Stout", day(), words, DAY);
        String text = ParsedPages.plain(ParsedPages.parsed(html).getDocumentElement());
        for (Step step : Checklist.of(day()).steps()) {
            assertTrue(text.contains(words.of(step.words())), step.id());
        }
        for (DoseLine line : DoseLine.of(day().sugar().dose(), words)) {
            assertTrue(text.contains(line.value()), line.label());
        }
        for (Phrase note : day().notes()) {
            assertTrue(text.contains(words.of(note)), note.key());
        }
        assertEquals(1, text.split("licensed practice", -1).length - 1, "the caution stands once");
        assertTrue(html.contains("@page{size:A4"));
        assertTrue(html.contains("14 November 2026"));
    }

    @Test
    void namesCannotBreakOutOfThePage() {
        String html = Worksheet.of(NASTY, day(), English.in(UnitSystem.METRIC), DAY);
        ParsedPages.parsed(html);
        assertFalse(html.contains("<script"));
        ParsedPages.parsed(Worksheet.of("a\u0000b\ud800c\ufffe", day(), English.in(UnitSystem.METRIC), DAY));
    }
}
