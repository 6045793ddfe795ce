package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;

/** Dates and figures as a person writes them, in the cellar's zone and units; English. */
public record Wording(ZoneId zone, UnitSystem units, Instant at) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEEE HH:mm", Locale.ENGLISH);

    public static Wording of(CellarOutlook outlook) {
        return new Wording(outlook.cellar().zone(), outlook.cellar().settings().units(), outlook.at());
    }

    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** {@code 12 November}, with its year when that is not the present one. */
    public String day(Instant instant) {
        return day(date(instant));
    }

    public String day(LocalDate date) {
        return (date.getYear() == date(at).getYear() ? DAY : DAY_OF_YEAR).format(date);
    }

    /** {@code 12 November, 18:30}. */
    public String dayAndTime(Instant instant) {
        return day(instant) + ", " + clock(instant);
    }

    /** {@code 18:30}. */
    public String clock(Instant instant) {
        return CLOCK.format(instant.atZone(zone));
    }

    /** {@code Mar 2027}. */
    public String month(LocalDate date) {
        return MONTH.format(date);
    }

    /** How a person says when: now, today 19:30, tomorrow 08:00, Saturday 18:00, 12 December. */
    public String when(Instant instant) {
        if (!instant.isAfter(at)) {
            return "now";
        }
        ZonedDateTime local = instant.atZone(zone);
        long days = ChronoUnit.DAYS.between(date(at), local.toLocalDate());
        if (days == 0) {
            return "today " + CLOCK.format(local);
        }
        if (days == 1) {
            return "tomorrow " + CLOCK.format(local);
        }
        return days < 7 ? moment(instant) : day(instant);
    }

    /** Full days from then until the instant looked at, the first day being 1. */
    public long dayNumber(Instant since) {
        return Math.max(0, Duration.between(since, at).toDays()) + 1;
    }

    /** A moment within the coming days: {@code Friday 19:30}. */
    public String moment(Instant instant) {
        return MOMENT.format(instant.atZone(zone));
    }

    public String celsius(double celsius) {
        if (units == UnitSystem.US) {
            return Temperature.ofCelsius(celsius).text(units);
        }
        return Math.round(celsius) + " °C";
    }

    /** A temperature not to be passed: rounded down in the units shown. */
    public String limitCelsius(double celsius) {
        if (units == UnitSystem.US) {
            return number(Math.floor(Temperature.ofCelsius(celsius).fahrenheit()), 0) + " °F";
        }
        return number(Math.floor(celsius), 0) + " °C";
    }

    public String temperature(double celsius) {
        return Temperature.ofCelsius(celsius).text(units);
    }

    public String bar(double bar) {
        return Pressure.ofBar(bar).text(units);
    }

    public String bars(Interval bar) {
        return bar(bar.median()) + " (" + bar(bar.low()) + " to " + bar(bar.high()) + ")";
    }

    public static String volumes(Interval volumes) {
        return number(volumes.median(), 1) + " vol (" + number(volumes.low(), 1) + " to " + number(volumes.high(), 1)
                + ")";
    }

    public static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    public String volumes(double volumes) {
        return Carbonation.ofVolumes(volumes).text();
    }

    /** {@code 2.1 to 2.5}, or one number when both ends read the same. */
    public static String range(Interval interval, int decimals) {
        String low = number(interval.low(), decimals);
        String high = number(interval.high(), decimals);
        return low.equals(high) ? low : low + " to " + high;
    }

    public static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    public static String bottles(int count) {
        return count == 1 ? "1 bottle" : count + " bottles";
    }
}
