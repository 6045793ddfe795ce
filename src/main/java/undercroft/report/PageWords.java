package undercroft.report;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import undercroft.outlook.CellarOutlook;
import undercroft.wording.ShelfWords;
import undercroft.quantity.Interval;

/** Dates and figures as the page writes them, seen from the outlook's instant on the cellar's wall clock. */
public record PageWords(ShelfWords words) {
    private static final DateTimeFormatter FULL =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final String NO_DAY = "not within a year";

    static PageWords of(CellarOutlook outlook) {
        return new PageWords(ShelfWords.of(outlook, Messages.english()));
    }

    /** {@code Saturday 21 November 2026, 18:00}. */
    String full(Instant instant) {
        return FULL.format(instant.atZone(words.format().zone()));
    }

    String when(Instant instant) {
        return words.when(instant);
    }

    String day(Instant instant) {
        return words.day(instant);
    }

    String dayAndTime(Instant instant) {
        return words.dayAndTime(instant);
    }

    /** {@code 8 to 17 August}; both months where they differ. */
    String days(Instant from, Instant until) {
        LocalDate first = from.atZone(words.format().zone()).toLocalDate();
        LocalDate last = until.atZone(words.format().zone()).toLocalDate();
        if (first.equals(last)) {
            return words.day(first);
        }
        boolean sameMonth = first.getYear() == last.getYear() && first.getMonth() == last.getMonth();
        return (sameMonth ? first.getDayOfMonth() : words.day(first)) + " to " + words.day(last);
    }

    String dayOrNever(Optional<Instant> day) {
        return day.map(words::day).orElse(NO_DAY);
    }

    String month(Optional<LocalDate> date) {
        return date.map(MONTH::format).orElse("keeps for years");
    }

    String dateOrLong(Optional<LocalDate> date) {
        return date.map(words::day).orElse("more than ten years");
    }

    public String celsius(double celsius) {
        return words.format().celsius(celsius);
    }

    public String bar(double bar) {
        return words.format().bar(bar);
    }

    /** {@code 2.2 bar (2.0 to 2.5)} as two parts: the median, and the range. */
    String barRange(Interval bar) {
        return range(words.format().bar(bar.low()), words.format().bar(bar.high()));
    }

    public static String volumes(double volumes) {
        return number(volumes, 1) + " vol";
    }

    static String range(Interval interval, int decimals) {
        return range(number(interval.low(), decimals), number(interval.high(), decimals));
    }

    private static String range(String low, String high) {
        if (low.equals(high)) {
            return low;
        }
        int unit = low.lastIndexOf(' ');
        boolean shared = unit > 0 && high.endsWith(low.substring(unit));
        return (shared ? low.substring(0, unit) : low) + " to " + high;
    }

    /** In words: a heat limit may not exist, or may be passed already in the cold. */
    String heatLimit(double celsius) {
        if (Double.isInfinite(celsius)) {
            return "any room";
        }
        return celsius < 0 ? "passed even cold" : words.format().wholeCelsius(Math.floor(celsius));
    }

    /** {@code 1 keeping day}, {@code 29 keeping days}. */
    static String count(double number, String noun) {
        long whole = Math.round(number);
        return whole + " " + noun + (whole == 1 ? "" : "s");
    }

    static String percent(double share) {
        return words.format().percent(share);
    }

    static String number(double value, int decimals) {
        return words.format().number(value, decimals);
    }
}
