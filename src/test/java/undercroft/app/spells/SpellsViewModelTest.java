package undercroft.app.spells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.SpellSamples.air;
import static undercroft.outlook.SpellSamples.cellar;
import static undercroft.outlook.SpellSamples.day;
import static undercroft.outlook.SpellSamples.isWithin;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.picture.BoardPicture;
import undercroft.picture.SpellBoard;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.TextMeasure;
import undercroft.quantity.UnitSystem;
import undercroft.series.TimeSeries;
import undercroft.session.BackgroundTasks;
import undercroft.session.Forecasts;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.English;
import undercroft.wording.Messages;

class SpellsViewModelTest {
    private static final TimeSeries AIR = air(90, time -> isWithin(time, 40, 45) || isWithin(time, 70, 76) ? 31 : 19);

    private static CellarOutlook outlook() {
        Cellar one = cellar(120, "room");
        Batch strong = cellar(230, "room").batch("ale");
        Batch other = new Batch(
                "strong",
                "Strong ale",
                strong.beer(),
                strong.yeast(),
                strong.priming(),
                strong.fillingMethod(),
                strong.cappedAt(),
                strong.lots(),
                List.of(),
                "");
        return Outlooks.of(one.withBatch(other), Map.of("room", AIR), day(90));
    }

    private final SpellsViewModel model =
            new SpellsViewModel(Messages.english(), new SimpleObjectProperty<>(outlook()));

    /** The verdict's worst case is the end of the range beside it: both are rounded up. */
    @Test
    void theVerdictAndItsFiguresNameOneWorstCase() {
        int named = 0;
        for (SpellPage.Group group : model.pageProperty().get().groups()) {
            for (SpellPage.Line line : group.lines()) {
                Matcher said = Pattern.compile("up to ([0-9.]+) bar").matcher(line.verdict());
                if (said.find()) {
                    named++;
                    assertTrue(line.figures().get(0).contains("to " + said.group(1)), line.toString());
                }
            }
        }
        assertTrue(named > 0);
    }

    /** A line for each batch on the page, in its order; a name that looks like a formula is defused. */
    @Test
    void aSpellCanBeSavedAsATable() {
        SpellPage page = model.pageProperty().get();
        List<String> names = page.groups().stream()
                .flatMap(group -> group.lines().stream())
                .map(SpellPage.Line::name)
                .toList();
        List<String> lines = SpellTables.of(page, Messages.english()).lines().toList();
        assertTrue(lines.get(0).contains("what it means"), lines.get(0));
        assertEquals(names.size() + 1, lines.size());
        for (int i = 0; i < names.size(); i++) {
            assertTrue(lines.get(i + 1).startsWith(names.get(i)), lines.get(i + 1));
        }
    }

    @Test
    void theWorstBatchComesFirstAndItsWorstSpellIsChosen() {
        SpellBoard board = model.boardProperty().get();
        assertEquals(
                List.of("strong", "ale"),
                board.rows().stream().map(SpellBoard.Row::batchId).toList());
        assertEquals("strong", model.chosenProperty().get().impact().batchId());
        assertEquals(2, board.rows().get(0).marks().size());
    }

    @Test
    void theKeyboardReachesEverySpellAndStopsAtTheEnds() {
        model.move(SpellsViewModel.Step.DOWN);
        assertEquals("ale", model.chosenProperty().get().impact().batchId());
        model.move(SpellsViewModel.Step.DOWN);
        model.move(SpellsViewModel.Step.EARLIER);
        model.move(SpellsViewModel.Step.EARLIER);
        assertEquals(
                model.boardProperty().get().rows().get(1).marks().get(0),
                model.chosenProperty().get());
        model.move(SpellsViewModel.Step.LATER);
        assertEquals(
                model.boardProperty().get().rows().get(1).marks().get(1),
                model.chosenProperty().get());
    }

    @Test
    void anImpactTellsTheMomentItWasWarmest() {
        SpellPage page = model.pageProperty().get();
        SpellPage.Line line = page.groups().get(0).lines().get(0);
        long worst = line.worst().getEpochSecond();
        assertTrue(isWithin(worst, 40, 45.5) || isWithin(worst, 70, 76.5));
        assertTrue(page.picture().isPresent());
    }

    @Test
    void whatIsDrawnIsFoundUnderThePointer() {
        SpellBoard board = model.boardProperty().get();
        BoardPicture picture = BoardPicture.of(board, null, 700, English.in(UnitSystem.METRIC), TextMeasure.rough());
        for (SpellBoard.Row row : board.rows()) {
            for (SpellBoard.Mark mark : row.marks()) {
                Frame frame = picture.frameOf(mark).orElseThrow();
                assertEquals(
                        mark,
                        picture.at(frame.x() + frame.width() / 2, frame.y() + frame.height() / 2)
                                .orElseThrow());
            }
        }
        assertTrue(picture.at(2, 2).isEmpty());
    }

    @Test
    void aCellarWithoutSpellsHasNothingChosen() {
        CellarOutlook calm = Outlooks.of(cellar(120, "fridge"), Map.of(), day(20));
        SpellsViewModel empty = new SpellsViewModel(Messages.english(), new SimpleObjectProperty<>(calm));
        assertTrue(empty.boardProperty().get().isEmpty());
        assertNull(empty.pageProperty().get());
        empty.move(SpellsViewModel.Step.DOWN);
    }

    @Test
    void aSupposedMoveIsMadeOnlyWhenToldTo() {
        Workspace workspace = SampleWorkspace.of(cellar(150, "room"));
        Clock clock = Clock.fixed(day(30), ZoneOffset.UTC);
        BackgroundTasks atOnce = new BackgroundTasks(Runnable::run, Runnable::run);
        Forecasts forecasts = new Forecasts(workspace, Outlooks::of, atOnce, clock, fault -> {});
        forecasts.refresh();
        WhatIfViewModel supposing = new WhatIfViewModel(Messages.english(), workspace, forecasts, clock);
        WhatIfForm form = supposing.formProperty().get();
        form.kind().chosenProperty().set(WhatIfForm.Kind.MOVED);
        assertEquals("fridge", form.place().value().id(), "a place the bottles are not in comes first");
        form.place().chosenProperty().set(workspace.getCellar().place("room"));
        supposing.ask();
        assertFalse(supposing.canDoProperty().get(), "the place it stands in is no move");
        form.place().chosenProperty().set(workspace.getCellar().place("fridge"));
        supposing.ask();
        assertTrue(supposing.canDoProperty().get());
        form.kind().chosenProperty().set(WhatIfForm.Kind.WARMER);
        assertNull(supposing.pageProperty().get(), "no answer stands under another question");
        form.kind().chosenProperty().set(WhatIfForm.Kind.MOVED);
        supposing.ask();
        assertTrue(supposing.canDoProperty().get());
        assertEquals(1, supposing.pageProperty().get().lines().size());
        assertEquals(1, workspace.getCellar().batch("ale").lot("box").stays().size());
        supposing.doIt();
        assertEquals(
                "fridge",
                workspace.getCellar().batch("ale").lot("box").stayAt(day(31)).placeId());
        workspace.undo();
        assertEquals(1, workspace.getCellar().batch("ale").lot("box").stays().size());
    }
}
