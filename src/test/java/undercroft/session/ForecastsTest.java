package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookSamples;
import undercroft.series.TimeSeries;

/** The shelf is shown before its first forecast and fills in as that is made; later outlooks come whole. */
final class ForecastsTest {
    private final Deque<Runnable> background = new ArrayDeque<>();
    private final Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());
    private final CellarOutlook part =
            CellarOutlook.pending(OutlookSamples.cellar(), OutlookSamples.NOW.plusSeconds(1));
    private final CellarOutlook whole = OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW);
    private final List<String> asked = new ArrayList<>();
    private Runnable betweenParts = () -> {};

    private final Forecasts forecasts = new Forecasts(
            workspace,
            new Forecasts.Calculator() {
                @Override
                public CellarOutlook outlook(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
                    asked.add("whole");
                    return whole;
                }

                @Override
                public CellarOutlook outlook(
                        Cellar cellar,
                        Map<String, TimeSeries> temperatures,
                        Instant at,
                        Consumer<CellarOutlook> soFar) {
                    asked.add("part by part");
                    soFar.accept(part);
                    betweenParts.run();
                    soFar.accept(part);
                    asked.add("to its end");
                    return whole;
                }
            },
            new BackgroundTasks(background::add, Runnable::run),
            Clock.fixed(OutlookSamples.NOW, ZoneOffset.UTC),
            fault -> {
                throw fault;
            });

    private final List<CellarOutlook> shown = new ArrayList<>();

    @Test
    void theShelfIsKnownByItsCratesBeforeAnythingIsWorkedOut() {
        assertNull(forecasts.soFarProperty().get());
        forecasts.refresh();
        assertEquals(
                workspace.getCellar().batches(), forecasts.soFarProperty().get().pending());
        assertNull(forecasts.outlookProperty().get());
    }

    @Test
    void theFirstOutlookIsToldPartByPartAndTheNextOnesWhole() {
        forecasts.soFarProperty().addListener((property, before, after) -> shown.add(after));
        forecasts.refresh();
        background.remove().run();
        assertSame(part, shown.get(1), "after the crates alone");
        assertSame(whole, forecasts.soFarProperty().get());
        assertSame(whole, forecasts.outlookProperty().get());
        shown.clear();
        forecasts.refresh();
        background.remove().run();
        assertEquals(List.of("part by part", "to its end", "whole"), asked);
        assertEquals(List.of(), shown, "the same outlook again changes nothing");
    }

    @Test
    void aNewerRequestEndsOneThatIsStillTelling() {
        betweenParts = () -> {
            betweenParts = () -> {};
            forecasts.refresh();
        };
        forecasts.refresh();
        background.remove().run();
        assertEquals(List.of("part by part"), asked);
        assertNull(forecasts.outlookProperty().get());
        background.remove().run();
        assertEquals(List.of("part by part", "part by part", "to its end"), asked);
        assertSame(whole, forecasts.outlookProperty().get());
    }
}
