package undercroft.app.form;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day as a person types it, perhaps with a time behind it: {@code Saturday 18:00}, {@code Sat}, {@code 28 Nov 2026 18:00}.
 *
 * @param time empty where only a day was typed
 * @param isSpoken false for a plain date, which stays as it was typed
 */
record DayText(LocalDate day, Optional<LocalTime> time, boolean isSpoken) {
    private static final Pattern SHAPE =
            Pattern.compile("(.*[^\\s,])[\\s,]+(\\d{1,2}[:.h]\\d{0,2}|\\d{1,2}\\s*(?:am|pm))");
    private static final int LEAST_LETTERS = 2;

    /**
     * Reads it.
     *
     * @param next whether a day of the week is the one to come, today included, or the one that was
     * @param locale its words for the days of the week count beside the English ones
     * @param dates reads plain dates and times
     */
    static DayText parse(String text, LocalDate today, boolean next, Locale locale, DateText dates) {
        String typed = text == null ? "" : text.strip();
        Optional<DayText> plain = day(typed, today, next, locale).map(day -> new DayText(day, Optional.empty(), true));
        if (plain.isPresent()) {
            return plain.get();
        }
        Matcher both = SHAPE.matcher(typed.toLowerCase(Locale.ROOT));
        if (both.matches()) {
            String first = typed.substring(0, both.end(1));
            LocalDate day = day(first, today, next, locale).orElseGet(() -> dates.date(first));
            return new DayText(day, Optional.of(dates.time(both.group(2))), true);
        }
        return new DayText(dates.date(typed), Optional.empty(), false);
    }

    private static Optional<LocalDate> day(String word, LocalDate today, boolean next, Locale locale) {
        String start = word.strip().replaceFirst("\\.$", "").toLowerCase(locale);
        if (start.length() < LEAST_LETTERS) {
            return Optional.empty();
        }
        for (DayOfWeek day : DayOfWeek.values()) {
            if (isBegun(day, start, locale) || isBegun(day, start, Locale.ENGLISH)) {
                return Optional.of(
                        today.with(next ? TemporalAdjusters.nextOrSame(day) : TemporalAdjusters.previousOrSame(day)));
            }
        }
        return Optional.empty();
    }

    private static boolean isBegun(DayOfWeek day, String start, Locale locale) {
        return day.getDisplayName(TextStyle.FULL, locale).toLowerCase(locale).startsWith(start);
    }
}
