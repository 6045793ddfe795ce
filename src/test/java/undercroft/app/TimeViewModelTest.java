package undercroft.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.outlook.OutlookSamples;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

class TimeViewModelTest {
    private final ObjectProperty<Instant> asOf = new SimpleObjectProperty<>();
    private final Clock clock = Clock.fixed(OutlookSamples.NOW, ZoneOffset.UTC);
    private final Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());
    private final TimeViewModel time = new TimeViewModel(Messages.english(), workspace, asOf, clock);

    @Test
    void todayFollowsTheClock() {
        assertNull(asOf.get());
        assertEquals("today, 25 November", time.labelProperty().get());
    }

    @Test
    void anotherDayIsSeenAtNoonOnTheCellarsClock() {
        time.dayProperty().set(-40);
        assertEquals(Instant.parse("2026-10-16T11:00:00Z"), asOf.get(), "British summer time until 25 October");
        assertEquals("16 October, 40 days ago", time.labelProperty().get());
        time.goToToday();
        assertNull(asOf.get());
    }

    @Test
    void aDayAheadIsCountedForward() {
        time.dayProperty().set(1);
        assertEquals("26 November, tomorrow", time.labelProperty().get());
        time.dayProperty().set(40);
        assertEquals("4 January 2027, in 40 days", time.labelProperty().get());
    }

    @Test
    void theFirstDayIsThatOfTheFirstCapping() {
        assertEquals(-200, time.firstDayProperty().get());
        workspace.change("emptied", cellar -> cellar.withServings(List.of()).withBatches(List.of()));
        assertEquals(-30, time.firstDayProperty().get());
    }

    @Test
    void aDayFromBeforeAllBatchesIsLeftWithThem() {
        time.dayProperty().set(-150);
        workspace.change("emptied", cellar -> cellar.withServings(List.of()).withBatches(List.of()));
        assertEquals(-30, time.dayProperty().get());
    }

    @Test
    void aCellarWithoutBatchesHasADayToLookAtToo() {
        Workspace empty = SampleWorkspace.of(Cellar.empty("New", ZoneId.of("Asia/Tokyo")));
        TimeViewModel there = new TimeViewModel(Messages.english(), empty, new SimpleObjectProperty<>(), clock);
        assertEquals("today, 26 November", there.labelProperty().get(), "it is past midnight in Tokyo");
    }
}
