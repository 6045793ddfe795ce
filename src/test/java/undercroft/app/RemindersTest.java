package undercroft.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static undercroft.outlook.ServingShelf.local;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Flocculation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.outlook.ServingShelf;
import undercroft.wording.Messages;

final class RemindersTest {
    private static final Instant NOW = local("2026-04-13T12:00");
    private final Reminders reminders = new Reminders();
    private final Batch batch = ServingShelf.ale("ale", Flocculation.FLOCCULENT, 40);

    private List<Reminders.Reminder> fresh(Cellar cellar, Instant at) {
        return reminders.fresh(ServingShelf.outlook(cellar, at), Messages.english());
    }

    @Test
    void aNewTaskToActOnIsToldOnce() {
        Cellar calm = ServingShelf.cellar(batch);
        Draw burst = new Draw(NOW.plusSeconds(600), 1, Draw.Fate.BURST, "");
        Cellar alarmed = ServingShelf.cellar(batch.withLot(batch.lot("box").withDraw(burst)));
        assertEquals(0, fresh(calm, NOW).size());
        assertEquals(1, fresh(alarmed, NOW.plusSeconds(900)).size());
        assertEquals(0, fresh(alarmed, NOW.plusSeconds(1200)).size());
    }

    @Test
    void whatIsInPlainSightAtTheStartIsNotTold() {
        Draw burst = new Draw(NOW.minusSeconds(600), 1, Draw.Fate.BURST, "");
        assertEquals(
                0,
                fresh(ServingShelf.cellar(batch.withLot(batch.lot("box").withDraw(burst))), NOW)
                        .size());
    }

    @Test
    void bottlesThatGoIntoTheColdWithinTheHourAreToldOnce() {
        Cellar cellar = ServingShelf.cellar(batch)
                .withServings(List.of(ServingShelf.serving("sat", "ale", 4, local("2026-04-18T18:00"))));
        Instant chill =
                ServingShelf.outlook(cellar, NOW).servings().get(0).chillFrom().orElseThrow();
        assertEquals(0, fresh(cellar, chill.minusSeconds(2 * 3600)).size());
        List<Reminders.Reminder> told = fresh(cellar, chill.minusSeconds(1800));
        assertEquals("Into the cold: 4 bottles of Ale, ale", told.get(0).title());
        assertEquals(0, fresh(cellar, chill.minusSeconds(900)).size());
    }
}
