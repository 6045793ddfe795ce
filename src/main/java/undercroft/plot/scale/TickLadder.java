package undercroft.plot.scale;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.temporal.TemporalAdjusters;
import java.time.temporal.WeekFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Ticks of a time axis at round local times. Steps of a day and more walk local dates, shorter ones walk the clock of
 * each local day, so that a tick says what the clock on the wall said: a time the clocks skipped has none, a time they
 * showed twice has two.
 */
public final class TickLadder {
    private enum Unit {
        MINUTE(60),
        DAY(86_400),
        WEEK(7 * 86_400),
        MONTH(2_629_746),
        YEAR(31_556_952);

        private final long seconds;

        Unit(long seconds) {
            this.seconds = seconds;
        }
    }

    private record Step(Unit unit, int size) {
        long seconds() {
            return unit.seconds * size;
        }
    }

    private static final int MINUTES_A_DAY = 1440;
    private static final List<Step> LADDER = List.of(
            new Step(Unit.MINUTE, 1),
            new Step(Unit.MINUTE, 2),
            new Step(Unit.MINUTE, 5),
            new Step(Unit.MINUTE, 10),
            new Step(Unit.MINUTE, 15),
            new Step(Unit.MINUTE, 30),
            new Step(Unit.MINUTE, 60),
            new Step(Unit.MINUTE, 120),
            new Step(Unit.MINUTE, 180),
            new Step(Unit.MINUTE, 360),
            new Step(Unit.MINUTE, 720),
            new Step(Unit.DAY, 1),
            new Step(Unit.DAY, 2),
            new Step(Unit.WEEK, 1),
            new Step(Unit.WEEK, 2),
            new Step(Unit.MONTH, 1),
            new Step(Unit.MONTH, 2),
            new Step(Unit.MONTH, 3),
            new Step(Unit.MONTH, 6),
            new Step(Unit.YEAR, 1),
            new Step(Unit.YEAR, 2),
            new Step(Unit.YEAR, 5),
            new Step(Unit.YEAR, 10));

    private final long from;
    private final long until;
    private final ZoneId zone;
    private final Locale locale;
    private final DateTimeFormatter dayLabel;

    private TickLadder(long from, long until, ZoneId zone, Locale locale) {
        this.from = from;
        this.until = until;
        this.zone = zone;
        this.locale = locale;
        this.dayLabel = DateTimeFormatter.ofPattern(monthComesFirst(locale) ? "MMM d" : "d MMM", locale);
    }

    /**
     * The ticks from {@code from} until {@code until}, both included, on the closest rung that gives no more than
     * {@code maxTicks}; on the last rung as many as there are decades.
     */
    public static List<TimeTick> ticks(long from, long until, ZoneId zone, Locale locale, int maxTicks) {
        if (until < from || maxTicks < 1) {
            throw new IllegalArgumentException("ticks need a stretch of time and room for one");
        }
        TickLadder ladder = new TickLadder(from, until, zone, locale);
        for (Step step : LADDER) {
            if ((until - from) / step.seconds() <= maxTicks + 1L) {
                List<TimeTick> ticks = ladder.walk(step);
                if (ticks.size() <= maxTicks) {
                    return ticks;
                }
            }
        }
        return ladder.walk(LADDER.get(LADDER.size() - 1));
    }

    private List<TimeTick> walk(Step step) {
        List<TimeTick> ticks = new ArrayList<>();
        LocalDate date = firstDate(step);
        while (true) {
            long start = date.atStartOfDay(zone).toEpochSecond();
            if (start > until) {
                break;
            }
            add(ticks, start, dateLabel(step, date), isMajor(step, date));
            if (step.unit == Unit.MINUTE) {
                walkClock(ticks, date, step.size);
            }
            date = next(step, date);
        }
        ticks.sort(Comparator.comparingLong(TimeTick::epochSecond));
        if (step.unit == Unit.MINUTE && ticks.stream().noneMatch(TimeTick::major)) {
            nameTheDay(ticks);
        }
        return List.copyOf(ticks);
    }

    /** Where no midnight is in view, the first tick says which day it is. */
    private void nameTheDay(List<TimeTick> ticks) {
        if (!ticks.isEmpty()) {
            TimeTick first = ticks.get(0);
            String day =
                    dayLabel.format(Instant.ofEpochSecond(first.epochSecond()).atZone(zone));
            ticks.set(0, new TimeTick(first.epochSecond(), day + ", " + first.label(), false));
        }
    }

    private void walkClock(List<TimeTick> ticks, LocalDate date, int stepMinutes) {
        DateTimeFormatter clock = DateTimeFormatter.ofPattern("HH:mm", locale);
        for (int minute = stepMinutes; minute < MINUTES_A_DAY; minute += stepMinutes) {
            LocalTime time = LocalTime.of(minute / 60, minute % 60);
            for (ZoneOffset offset : zone.getRules().getValidOffsets(date.atTime(time))) {
                add(ticks, date.atTime(time).toEpochSecond(offset), clock.format(time), false);
            }
        }
    }

    private void add(List<TimeTick> ticks, long epochSecond, String label, boolean major) {
        if (epochSecond >= from && epochSecond <= until) {
            ticks.add(new TimeTick(epochSecond, label, major));
        }
    }

    private LocalDate firstDate(Step step) {
        LocalDate date = Instant.ofEpochSecond(from).atZone(zone).toLocalDate();
        return switch (step.unit) {
            case MINUTE -> date;
            case DAY -> date.minusDays(Math.floorMod(date.toEpochDay(), (long) step.size));
            case WEEK -> firstWeek(date, step.size);
            case MONTH -> date.withDayOfMonth(1).withMonth((date.getMonthValue() - 1) / step.size * step.size + 1);
            case YEAR -> LocalDate.of(Math.floorDiv(date.getYear(), step.size) * step.size, 1, 1);
        };
    }

    private LocalDate firstWeek(LocalDate date, int size) {
        DayOfWeek first = WeekFields.of(locale).getFirstDayOfWeek();
        LocalDate start = date.with(TemporalAdjusters.previousOrSame(first));
        long week = Math.floorDiv(start.toEpochDay(), 7L);
        return start.minusWeeks(Math.floorMod(week, (long) size));
    }

    private static LocalDate next(Step step, LocalDate date) {
        return switch (step.unit) {
            case MINUTE -> date.plusDays(1);
            case DAY -> date.plusDays(step.size);
            case WEEK -> date.plusWeeks(step.size);
            case MONTH -> date.plusMonths(step.size);
            case YEAR -> date.plusYears(step.size);
        };
    }

    private String dateLabel(Step step, LocalDate date) {
        return switch (step.unit) {
            case MINUTE, DAY, WEEK -> dayLabel.format(date);
            case MONTH ->
                date.getMonth() == Month.JANUARY
                        ? Integer.toString(date.getYear())
                        : DateTimeFormatter.ofPattern("LLL", locale).format(date);
            case YEAR -> Integer.toString(date.getYear());
        };
    }

    private static boolean isMajor(Step step, LocalDate date) {
        return switch (step.unit) {
            case MINUTE -> true;
            case DAY -> date.getDayOfMonth() == 1;
            case WEEK -> false;
            case MONTH -> date.getMonth() == Month.JANUARY;
            case YEAR -> false;
        };
    }

    private static boolean monthComesFirst(Locale locale) {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
        return pattern.indexOf('M') < pattern.indexOf('d');
    }
}
