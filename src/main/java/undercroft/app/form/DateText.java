package undercroft.app.form;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** Dates and times of day as typed. Months are words or stand in ISO order, so that day and month cannot be swapped. */
public record DateText(Messages messages) {
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern WORDS = Pattern.compile("(\\d{1,2})\\.?\\s*(\\p{L}{3,})\\.?,?\\s*(\\d{4})");
    /** Where dots stand between the parts, the day comes first. */
    private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\.\\s*(\\d{1,2})\\.\\s*(\\d{4})");

    private static final Pattern DAY = Pattern.compile("(\\d{1,2})\\.?\\s*(\\p{L}{3,})\\.?");
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2})(?:[:.h](\\d{2})?)?\\s*(am|pm|uhr)?");

    public String of(LocalDate date) {
        return written("date.short-day-and-year", date);
    }

    String of(LocalTime time) {
        return written("date.clock", time);
    }

    String of(MonthDay day) {
        return written("date.day", day);
    }

    LocalDate date(String text) {
        String typed = text == null ? "" : text.strip();
        try {
            Matcher iso = ISO.matcher(typed);
            if (iso.matches()) {
                return LocalDate.of(number(iso, 1), number(iso, 2), number(iso, 3));
            }
            Matcher dotted = DOTTED.matcher(typed);
            if (dotted.matches()) {
                return LocalDate.of(number(dotted, 3), number(dotted, 2), number(dotted, 1));
            }
            Matcher words = WORDS.matcher(typed);
            if (words.matches()) {
                return LocalDate.of(number(words, 3), month(words.group(2)), number(words, 1));
            }
        } catch (DateTimeException impossible) {
            throw new InvalidInput("", "form.fault.no-such-date", typed);
        }
        throw new InvalidInput("", "form.fault.date", typed);
    }

    MonthDay day(String text) {
        String typed = text == null ? "" : text.strip();
        Matcher words = DAY.matcher(typed);
        try {
            if (words.matches()) {
                return MonthDay.of(month(words.group(2)), number(words, 1));
            }
        } catch (DateTimeException impossible) {
            throw new InvalidInput("", "form.fault.no-such-date", typed);
        }
        throw new InvalidInput("", "form.fault.day", typed);
    }

    LocalTime time(String text) {
        String typed = text == null ? "" : text.strip().toLowerCase(Locale.ROOT);
        Matcher clock = CLOCK.matcher(typed);
        if (clock.matches()) {
            int hour = number(clock, 1);
            int minute = clock.group(2) == null ? 0 : number(clock, 2);
            boolean wholeDay = clock.group(3) == null || clock.group(3).equals("uhr");
            boolean fits = wholeDay ? hour < 24 : hour >= 1 && hour <= 12;
            if (fits && minute < 60) {
                int past = "pm".equals(clock.group(3)) ? 12 : 0;
                return LocalTime.of(wholeDay ? hour : hour % 12 + past, minute);
            }
        }
        throw new InvalidInput("", "form.fault.time", typed);
    }

    private String written(String patternKey, TemporalAccessor time) {
        return DateTimeFormatter.ofPattern(messages.of(patternKey), messages.locale())
                .format(time);
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private Month month(String word) {
        String start = word.toLowerCase(Locale.ROOT);
        for (Month month : Month.values()) {
            boolean here = month.getDisplayName(TextStyle.FULL, messages.locale())
                    .toLowerCase(messages.locale())
                    .startsWith(start);
            if (here || month.name().toLowerCase(Locale.ROOT).startsWith(start)) {
                return month;
            }
        }
        throw new DateTimeException(word);
    }
}
