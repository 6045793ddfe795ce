package undercroft.plot.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DayTicksTest {
    private static final long DAY = 86_400;
    private static final DayTicks TICKS = new DayTicks(1_000_000, "day");

    @Test
    void daysAreCountedFromTheInstantInRoundSteps() {
        List<TimeTick> ticks = TICKS.ticks(1_000_000 - 2 * DAY, 1_000_000 + 45 * DAY, 6);
        assertEquals(
                List.of("day 0", "day 10", "day 20", "day 30", "day 40"),
                ticks.stream().map(TimeTick::label).toList());
        assertEquals(1_000_000 + 20 * DAY, ticks.get(2).epochSecond());
        assertTrue(ticks.get(0).major());
    }

    @Test
    void noMoreTicksThanThereIsRoomFor() {
        for (int days = 1; days < 900; days += 7) {
            assertTrue(TICKS.ticks(1_000_000, 1_000_000 + days * DAY, 8).size() <= 9, days + " days");
        }
    }
}
