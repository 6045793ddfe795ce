package undercroft.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.TimeSeries;

class PlotTableTest {
    private static final long HOUR = 3_600;

    private static PlotStack stack(long until) {
        TimeSeries line =
                new TimeSeries.Builder().add(0, 1).add(100 * 24 * HOUR, 101).build();
        LineLayer layer = new LineLayer(line, 200 * 24 * HOUR, Stroke.of(Role.INK, 1), "");
        return PlotStack.of(0, until, ZoneOffset.UTC, Locale.UK)
                .with(Plot.of("Value, bar", ValueAxis.auto("bar", 2), layer))
                .withNow(36 * HOUR, "now");
    }

    @Test
    void aRowForEachRoundStepAndOneForNow() {
        PlotTable table = PlotTable.of(stack(10 * 24L * HOUR));
        assertEquals(List.of("Value, bar"), table.titles());
        List<Long> times = table.rows().stream().map(PlotTable.Row::epochSecond).toList();
        assertTrue(times.contains(36 * HOUR));
        assertTrue(times.contains(48 * HOUR));
        assertEquals(times.stream().sorted().distinct().toList(), times);
        double now = table.rows().stream()
                .filter(row -> row.epochSecond() == 36 * HOUR)
                .findFirst()
                .orElseThrow()
                .values()
                .get(0)
                .value()
                .orElseThrow();
        assertEquals(2.5, now, 1e-9, "1 and a day and a half");
    }

    @Test
    void itStaysShortHoweverLongTheTime() {
        for (int days = 1; days <= 100; days++) {
            int rows = PlotTable.of(stack(days * 24L * HOUR)).rows().size();
            assertTrue(rows >= 3 && rows <= 62, days + " days: " + rows);
        }
    }
}
