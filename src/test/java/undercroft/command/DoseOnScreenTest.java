package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.app.bottling.BottlingViewModel;
import undercroft.app.bottling.DaySheet;
import undercroft.app.bottling.PlanForm;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.Cellar;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Yeast;
import undercroft.quantity.UnitSystem;
import undercroft.session.SampleWorkspace;
import undercroft.wording.DoseLine;
import undercroft.wording.English;
import undercroft.wording.Messages;

final class DoseOnScreenTest {
    @TempDir
    private Path scratch;

    @ParameterizedTest
    @CsvSource({
        "18, 20, 2.2, sucrose",
        "9.5, 12.5, 2.75, honey",
        "18.92705892, 22, 2.4, dextrose",
        "20, 18, 2.6, dry-malt-extract"
    })
    void theCommandPrintsTheFiguresOfTheScreenToTheLastDigit(
            double litres, double warmest, double target, String sugar) {
        Terminal terminal = Terminal.run(
                scratch,
                "dose",
                "--beer",
                litres + "L",
                "--warmest",
                warmest + "C",
                "--target",
                target + "vol",
                "--sugar",
                sugar);
        assertEquals(0, terminal.code(), terminal.err());
        List<DoseLine> onScreen = onScreen(litres, warmest, target, sugar);
        assertTrue(onScreen.size() >= 8);
        List<String> printed = terminal.out().lines().toList();
        for (int i = 0; i < onScreen.size(); i++) {
            assertEquals(onScreen.get(i).label() + ": " + onScreen.get(i).value(), printed.get(i));
        }
    }

    private static List<DoseLine> onScreen(double litres, double warmest, double target, String sugar) {
        FillingPlan plan = FillingPlan.draft(litres + 1, target)
                .withShares(new FillingPlan.Shares(litres + 1, 1, 0))
                .withWish(FillingPlan.Wish.of(target, sugar))
                .withBottles(List.of(new BottleStock("sparkling-750", GlassColour.GREEN, false, 30)));
        Beer beer = new Beer(
                BeerStyle.PALE_ALE,
                5,
                25,
                0,
                15,
                warmest,
                java.util.OptionalDouble.empty(),
                java.util.OptionalDouble.empty());
        Yeast yeast = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false);
        Cellar cellar =
                Cellar.empty("Test", ZoneOffset.UTC).withBatch(Batch.planned("bitter", "Bitter", beer, yeast, plan));
        BottlingViewModel model = new BottlingViewModel(
                Messages.english(),
                SampleWorkspace.of(cellar),
                Clock.fixed(Instant.parse("2026-11-21T17:00:00Z"), ZoneOffset.UTC),
                id -> {});
        model.open("bitter");
        PlanForm form = model.formProperty().get();
        return new DaySheet(form.dayProperty().get().orElseThrow(), English.in(UnitSystem.METRIC)).dose();
    }
}
