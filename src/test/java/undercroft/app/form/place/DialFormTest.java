package undercroft.app.form.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.outlook.Outlooks;
import undercroft.outlook.SpellSamples;
import undercroft.series.TimeSeries;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

class DialFormTest {
    private static final Instant NOW = SpellSamples.day(10);
    private final Cellar cellar = SpellSamples.cellar(120, "room");
    private final Workspace workspace = SampleWorkspace.of(cellar);

    private DialForm form(Instant now) {
        return new DialForm(Messages.english(), cellar, cellar.place("room"), now);
    }

    private TimeSeries log() {
        return workspace.getState().temperatures().get("room");
    }

    private void readDay(int day, String low, String high) {
        DialForm form = form(NOW);
        form.kind().chosenProperty().set(DialForm.Kind.DAY);
        form.at().stepDays(day - 10);
        form.low().textProperty().set(low);
        form.high().textProperty().set(high);
        assertTrue(form.canSave());
        form.save(workspace);
    }

    @Test
    void dailyReadingsCountAsCoverage() {
        for (int day = 0; day <= 10; day++) {
            readDay(day, "17", "23");
        }
        double coverage = Outlooks.of(cellar, Map.of("room", log()), NOW)
                .batch("ale")
                .mainLot()
                .temperature()
                .coverage();
        assertEquals(1, coverage, 0.01);
    }

    @Test
    void aReadingStandsForThreeHours() {
        DialForm form = form(NOW);
        form.celsius().textProperty().set("19.5");
        form.save(workspace);
        assertEquals(2, log().size());
        assertEquals(NOW.getEpochSecond(), log().lastTime());
        assertEquals(3 * 3600, log().lastTime() - log().firstTime());
    }

    @Test
    void aLoggedHourStaysAsItIs() {
        long noon = NOW.getEpochSecond() - 86_400;
        workspace.changeTemperatures(
                "log", "room", new TimeSeries.Builder().add(noon, 30).build());
        readDay(9, "17", "23");
        assertEquals(24, log().size());
        assertEquals(30, log().interpolated(noon));
    }

    @Test
    void aReadingOfTomorrowOrUpsideDownIsRefused() {
        DialForm ahead = form(NOW);
        ahead.celsius().textProperty().set("19");
        ahead.at().stepDays(1);
        assertFalse(ahead.canSave());
        DialForm twisted = form(NOW);
        twisted.kind().chosenProperty().set(DialForm.Kind.DAY);
        twisted.low().textProperty().set("23");
        twisted.high().textProperty().set("17");
        assertFalse(twisted.canSave());
    }
}
