package undercroft.outlook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import undercroft.quantity.Interval;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;

/** Dates and figures as a person writes them, in the cellar's zone and units; English. */
public record Wording(ZoneId zone, UnitSystem units, Instant at) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEEE HH:mm", Locale.ENGLISH);

    public String day(Instant instant) {
        return day(instant.atZone(zone).toLocalDate());
    }

    public String day(LocalDate date) {
        boolean thisYear = date.getYear() == at.atZone(zone).getYear();
        return (thisYear ? DAY : DAY_OF_YEAR).format(date);
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
            return Wording.fixed(Math.floor(Temperature.ofCelsius(celsius).fahrenheit()), 0) + " °F";
        }
        return Wording.fixed(Math.floor(celsius), 0) + " °C";
    }

    public String celsiusExactly(double celsius) {
        return Temperature.ofCelsius(celsius).text(units);
    }

    public String bar(double bar) {
        return Pressure.ofBar(bar).text(units);
    }

    public String bars(Interval bar) {
        return bar(bar.median()) + " (" + bar(bar.low()) + " to " + bar(bar.high()) + ")";
    }

    public static String volumes(Interval volumes) {
        return fixed(volumes.median(), 1) + " vol (" + fixed(volumes.low(), 1) + " to " + fixed(volumes.high(), 1)
                + ")";
    }

    public static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    public static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    public static String bottles(int count) {
        return count == 1 ? "1 bottle" : count + " bottles";
    }
}
