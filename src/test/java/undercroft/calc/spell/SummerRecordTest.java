package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.calc.spell.Spell.Kind;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/** A real record: daily extremes of New York, May to September 2013 (NOAA; the file names its source and licence). */
class SummerRecordTest {
    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;

    private record Day(LocalDate date, double highest, double lowest) {
        double middle() {
            return (highest + lowest) / 2;
        }

        long start() {
            return date.toEpochDay() * DAY;
        }
    }

    @Test
    void theHottestWeekOfTheRecordIsAWarmSpell() throws IOException {
        List<Day> days = days();
        Span hottest = hottestWeek(days);
        BottleHistory history = BottleLag.of(
                sines(days), days.get(0).start(), days.get(days.size() - 1).start() + DAY, HOUR, 6);
        List<Spell> warm = SpellFinder.find(history, SpellRule.STANDARD).stream()
                .filter(spell -> spell.kind() == Kind.WARM)
                .toList();
        Spell hottestSpell = warm.stream()
                .max(Comparator.comparingDouble(Spell::peakCelsius))
                .orElseThrow();

        // Counted from the record itself: 15 to 21 July.
        assertEquals(LocalDate.of(2013, 7, 15).toEpochDay() * DAY, hottest.fromInclusive());
        assertTrue(hottestSpell.span().overlaps(hottest));
        assertTrue(Math.abs(hottest.fromInclusive() - hottestSpell.span().fromInclusive()) <= DAY);
        assertTrue(Math.abs(hottest.untilExclusive() - hottestSpell.span().untilExclusive()) <= DAY);
        assertTrue(hottestSpell.certain());
        // A lag keeps the peak between the warmest day's mean and its maximum, both read off the record.
        List<Day> week =
                days.stream().filter(day -> hottest.contains(day.start())).toList();
        double warmestMean = week.stream().mapToDouble(Day::middle).max().orElseThrow();
        double warmest = week.stream().mapToDouble(Day::highest).max().orElseThrow();
        assertTrue(hottestSpell.peakCelsius() > warmestMean && hottestSpell.peakCelsius() < warmest);
    }

    @Test
    void stackedBoxesFeelTheSameWeekLaterAndLess() throws IOException {
        List<Day> days = days();
        TimeSeries air = sines(days);
        long from = days.get(0).start();
        long until = days.get(days.size() - 1).start() + DAY;
        Spell box = hottest(BottleLag.of(air, from, until, HOUR, 6));
        Spell boxes = hottest(BottleLag.of(air, from, until, HOUR, 12));
        Spell cellar = hottest(BottleLag.of(air, from, until, HOUR, 48));
        assertTrue(box.peakCelsius() > boxes.peakCelsius() && boxes.peakCelsius() > cellar.peakCelsius());
        assertTrue(box.span().fromInclusive() < boxes.span().fromInclusive());
        assertTrue(boxes.span().fromInclusive() < cellar.span().fromInclusive());
        assertTrue(cellar.span().overlaps(hottestWeek(days)));
    }

    /** A reading every six hours is the sparsest that counts as measured throughout. */
    @Test
    void readingsEverySixHoursFindTheSameWeek() throws IOException {
        List<Day> days = days();
        TimeSeries hourly = sines(days);
        TimeSeries.Builder sparse = new TimeSeries.Builder();
        for (int i = 0; i < hourly.size(); i += 6) {
            sparse.add(hourly.timeAt(i), hourly.valueAt(i));
        }
        long from = days.get(0).start();
        long until = days.get(days.size() - 1).start() + DAY;
        Spell full = hottest(BottleLag.of(hourly, from, until, HOUR, 6));
        Spell few = hottest(BottleLag.of(sparse.build(), from, until, HOUR, 6));
        assertTrue(Math.abs(full.span().fromInclusive() - few.span().fromInclusive()) <= 6 * HOUR);
        assertEquals(full.peakCelsius(), few.peakCelsius(), 0.8);
    }

    private static Spell hottest(BottleHistory history) {
        return SpellFinder.find(history, SpellRule.STANDARD).stream()
                .max(Comparator.comparingDouble(Spell::peakCelsius))
                .orElseThrow();
    }

    private static Span hottestWeek(List<Day> days) {
        int best = 0;
        double bestSum = Double.NEGATIVE_INFINITY;
        for (int i = 0; i + 7 <= days.size(); i++) {
            double sum =
                    days.subList(i, i + 7).stream().mapToDouble(Day::middle).sum();
            if (sum > bestSum) {
                bestSum = sum;
                best = i;
            }
        }
        return new Span(days.get(best).start(), days.get(best).start() + 7L * DAY);
    }

    /** Each day a sine between its extremes, warmest at 15:00. */
    private static TimeSeries sines(List<Day> days) {
        TimeSeries.Builder air = new TimeSeries.Builder();
        for (Day day : days) {
            for (int hour = 0; hour < 24; hour++) {
                double swing = (day.highest() - day.lowest()) / 2;
                air.add(day.start() + (long) hour * HOUR, day.middle() + swing * Math.cos((hour - 15) * Math.PI / 12));
            }
        }
        return air.build();
    }

    private static List<Day> days() throws IOException {
        try (InputStream in =
                SummerRecordTest.class.getResourceAsStream("/undercroft/series/new-york-2013-summer.csv")) {
            List<Day> days = new ArrayList<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                if (!line.startsWith("#") && !line.startsWith("date")) {
                    List<String> cells = List.of(line.split(",", -1));
                    days.add(new Day(
                            LocalDate.parse(cells.get(0)),
                            Double.parseDouble(cells.get(1)),
                            Double.parseDouble(cells.get(2))));
                }
            }
            return days;
        }
    }
}
