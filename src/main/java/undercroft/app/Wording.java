package undercroft.app;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import undercroft.outlook.CellarOutlook;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;

/** Dates and figures as a person reads them, seen from an instant on the cellar's wall clock. */
public record Wording(ZoneId zone, Instant now, UnitSystem units) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    public static Wording of(CellarOutlook outlook) {
        return new Wording(
                outlook.cellar().zone(),
                outlook.at(),
                outlook.cellar().settings().units());
    }

    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** {@code 12 November}, with its year when that is not the present one. */
    public String day(Instant instant) {
        return day(date(instant));
    }

    public String day(LocalDate date) {
        return (date.getYear() == date(now).getYear() ? DAY : DAY_OF_YEAR).format(date);
    }

    /** {@code 12 November, 18:30}. */
    public String dayAndTime(Instant instant) {
        return Texts.of("words.date.with-time", day(instant), CLOCK.format(instant.atZone(zone)));
    }

    /** {@code Mar 2027}. */
    public String month(LocalDate date) {
        return MONTH.format(date);
    }

    /** How a person says when: now, today 19:30, tomorrow 08:00, Saturday 18:00, 12 December. */
    public String when(Instant instant) {
        if (!instant.isAfter(now)) {
            return Texts.of("words.when.now");
        }
        ZonedDateTime local = instant.atZone(zone);
        long days = ChronoUnit.DAYS.between(date(now), local.toLocalDate());
        String clock = CLOCK.format(local);
        if (days == 0) {
            return Texts.of("words.when.today", clock);
        }
        if (days == 1) {
            return Texts.of("words.when.tomorrow", clock);
        }
        return days < 7 ? Texts.of("words.when.weekday", WEEKDAY.format(local), clock) : day(instant);
    }

    /** As {@link #when}, with the time of day however far away. */
    public String moment(Instant instant) {
        boolean far = ChronoUnit.DAYS.between(date(now), date(instant)) >= 7;
        return far ? dayAndTime(instant) : when(instant);
    }

    /** {@code 18:30}. */
    public String clock(Instant instant) {
        return CLOCK.format(instant.atZone(zone));
    }

    /** Full days from then until now, the first day being 1. */
    public long dayNumber(Instant since) {
        return Math.max(0, Duration.between(since, now).toDays()) + 1;
    }

    public String temperature(double celsius) {
        return Temperature.ofCelsius(celsius).text(units);
    }

    public String pressure(double barGauge) {
        return Pressure.ofBar(barGauge).text(units);
    }

    public String volumes(double volumes) {
        return Carbonation.ofVolumes(volumes).text();
    }

    /** {@code 2.1 to 2.5}, or one number when both ends read the same. */
    public String range(Interval interval, int decimals) {
        String low = number(interval.low(), decimals);
        String high = number(interval.high(), decimals);
        return low.equals(high) ? low : Texts.of("words.range.from-to", low, high);
    }

    public static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
