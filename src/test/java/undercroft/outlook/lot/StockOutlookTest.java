package undercroft.outlook.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static undercroft.outlook.ServingShelf.local;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Flocculation;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.outlook.ServingShelf;

final class StockOutlookTest {
    private static final Instant NOW = local("2026-04-13T12:00");

    private static Batch drunk(int bottlesEachWeek, int weeks) {
        Batch batch = ServingShelf.ale("ale", Flocculation.ORDINARY, 40);
        for (int week = weeks; week > 0; week--) {
            Instant at = NOW.minusSeconds(week * 604_800L - 3600);
            for (int bottle = 0; bottle < bottlesEachWeek; bottle++) {
                Draw draw = new Draw(at.plusSeconds(bottle * 60L), 1, Draw.Fate.OPENED, "");
                batch = batch.withLot(batch.lot("box").withDraw(draw));
            }
        }
        return batch;
    }

    @Test
    void twoAWeekForEightWeeksLastTwelveMoreWeeks() {
        StockOutlook stock = StockOutlook.of(drunk(2, 8), NOW);
        assertEquals(24, stock.left());
        assertEquals(2, stock.perWeek().median(), 0.1);
        double weeks = (stock.end().orElseThrow().getEpochSecond() - NOW.getEpochSecond()) / (7 * 86_400.0);
        assertEquals(12, weeks, 0.6);
    }

    @Test
    void theTrajectoryStepsDownToWhatIsLeft() {
        StockOutlook stock = StockOutlook.of(drunk(2, 8), NOW);
        assertEquals(40, stock.trajectory().valueAt(0));
        assertEquals(24, stock.trajectory().lastValue());
        assertEquals(24, stock.ahead().orElseThrow().medianAt(0));
    }

    @Test
    void brokenBottlesAreNoDrinking() {
        Batch batch = ServingShelf.ale("ale", Flocculation.ORDINARY, 40);
        Draw broken = new Draw(NOW.minusSeconds(86_400), 12, Draw.Fate.BROKEN, "");
        StockOutlook stock = StockOutlook.of(batch.withLot(batch.lot("box").withDraw(broken)), NOW);
        assertEquals(28, stock.left());
        assertEquals(Optional.empty(), stock.end());
        assertEquals(
                List.of(40.0, 28.0),
                List.of(stock.trajectory().valueAt(0), stock.trajectory().lastValue()));
    }
}
