package undercroft.command;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.function.Function;
import java.util.regex.Pattern;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/** Reads option values, so that a fault names its option. */
final class Typed {
    private static final int FIRST_YEAR = 1990;
    private static final int YEARS_AHEAD = 5;

    private Typed() {}

    static <T> T read(String option, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (InvalidInput fault) {
            throw fault.at(option);
        }
    }

    static double number(String option, String text, double min, double max, String unit) {
        try {
            double value = Double.parseDouble(
                    text.strip().replace(',', '.').replaceAll("\\s*" + Pattern.quote(unit) + "$", ""));
            return Check.within(option, value, min, max, unit);
        } catch (NumberFormatException notANumber) {
            throw new InvalidInput(option, "command.fault.not-a-number", text, min, max, unit);
        }
    }

    /**
     * {@code 2026-08-14T15:00:00Z}, with any offset, or a date, which means its end in the zone: from the year
     * {@value #FIRST_YEAR} to {@value #YEARS_AHEAD} years after today, as nothing can be foretold further.
     */
    static Instant instant(String option, String text, ZoneId zone, Instant now) {
        Instant read = instant(option, text, zone);
        LocalDate first = LocalDate.of(FIRST_YEAR, 1, 1);
        LocalDate last = LocalDate.ofInstant(now, zone).plusYears(YEARS_AHEAD);
        if (read.isBefore(first.atStartOfDay(zone).toInstant())
                || !read.isBefore(last.plusDays(1).atStartOfDay(zone).toInstant())) {
            throw new InvalidInput(option, "command.fault.time-range", text, first.toString(), last.toString());
        }
        return read;
    }

    private static Instant instant(String option, String text, ZoneId zone) {
        try {
            return text.length() <= 10
                    ? LocalDate.parse(text)
                            .plusDays(1)
                            .atStartOfDay(zone)
                            .toInstant()
                            .minusSeconds(1)
                    : OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeParseException notAnInstant) {
            throw new InvalidInput(option, "command.fault.not-a-time", text);
        }
    }
}
