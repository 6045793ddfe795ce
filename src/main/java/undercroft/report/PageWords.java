package undercroft.report;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import undercroft.outlook.CellarOutlook;
import undercroft.quantity.Interval;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** Dates and figures as the page writes them. */
public record PageWords(ShelfWords words) {
    static PageWords of(CellarOutlook outlook) {
        return new PageWords(ShelfWords.of(outlook, Messages.english()));
    }

    /** {@code Saturday 21 November 2026, 18:00}. */
    String full(Instant instant) {
        return words.format().full(instant);
    }

    String when(Instant instant) {
        return words.when(instant);
    }

    String dayAndTime(Instant instant) {
        return words.dayAndTime(instant);
    }

    /** {@code 8 to 17 August}; both months where they differ. */
    String days(Instant from, Instant until) {
        return words.days(from, until);
    }

    String dayOrNever(Optional<Instant> day) {
        return day.map(words::day).orElseGet(() -> words.of("figure.ready.never"));
    }

    String dateOrLong(Optional<LocalDate> date) {
        return date.map(words::day).orElseGet(() -> words.of("figure.best-before.years"));
    }

    public String celsius(double celsius) {
        return words.format().celsius(celsius);
    }

    public String bar(double bar) {
        return words.format().bar(bar);
    }

    /** A pressure not to be passed. */
    String barLimit(double bar) {
        return words.format().barLimit(bar);
    }

    /** {@code 2.2 bar (2.0 to 2.5)}. */
    String bars(Interval bar) {
        return words.format().bars(bar);
    }

    /** {@code 2.3 vol (2.1 to 2.6)}. */
    String volumes(Interval volumes) {
        return words.format().volumes(volumes);
    }

    public String volumes(double volumes) {
        return words.format().volumes(volumes);
    }

    /** {@code 12 (10 to 15)}. */
    String around(Interval interval, int decimals) {
        return words.of(
                "figure.around",
                words.format().number(interval.median(), decimals),
                words.format().range(interval, decimals));
    }

    String heatLimit(double celsius) {
        return words.format().heatLimit(celsius);
    }

    /** {@code 1 cold spell}, {@code 29 cold spells}. */
    static String count(double number, String noun) {
        long whole = Math.round(number);
        return whole + " " + noun + (whole == 1 ? "" : "s");
    }

    String percent(double share) {
        return words.format().percent(share);
    }

    String number(double value, int decimals) {
        return words.format().number(value, decimals);
    }
}
