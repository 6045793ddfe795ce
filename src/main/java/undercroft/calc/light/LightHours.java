package undercroft.calc.light;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.LightSource;
import undercroft.quantity.Check;

/**
 * When a place is lit, by the clock on its wall. A lamp is as bright from first to last; daylight grows from nothing to
 * π/2 of its mean and back, half a sine from first light to last, as the height of the sun does near enough. The season
 * is not known to it.
 *
 * @param from first light, local time
 * @param spanHours from first light to last, 0 to 24 h; it may run past midnight
 * @param hours how long it is lit within that time, at most as long; spread over all of it
 * @param daylight whether it grows and fades
 */
public record LightHours(LocalTime from, double spanHours, double hours, boolean daylight) {
    private static final double DAY_SECONDS = 86_400;
    private static final double NOON_HOUR = 13;
    private static final double LAMP_FROM_HOUR = 18;
    private static final double SHOP_FROM_HOUR = 8;
    private static final double LATEST_HOUR = 24;

    public LightHours {
        Check.within("hoursPerDay", spanHours, 0, 24, "h");
        Check.within("hoursPerDay", hours, 0, spanHours, "h");
    }

    /**
     * From one time of day to another, the next day's when it is not later; the same time twice is the whole day.
     *
     * @param hoursPerDay how long it is lit within that time; more than all of it counts as all of it
     */
    public static LightHours between(LocalTime from, LocalTime until, double hoursPerDay, LightSource source) {
        double seconds = until.toSecondOfDay() - from.toSecondOfDay();
        double span = (seconds > 0 ? seconds : seconds + DAY_SECONDS) / 3600;
        return new LightHours(from, span, Math.min(span, hoursPerDay), source.isDaylight());
    }

    /**
     * Where only the number of hours is known (assumed): daylight about one in the afternoon, a shop's lamps from eight in
     * the morning, other lamps from six in the evening, or earlier so as to end by midnight.
     *
     * @param hoursPerDay 0 to 24 h
     */
    public static LightHours usual(LightPlace place, double hoursPerDay) {
        Check.within("hoursPerDay", hoursPerDay, 0, 24, "h");
        boolean daylight = place.source().isDaylight();
        boolean shop = place == LightPlace.SHOP_FLUORESCENT || place == LightPlace.SHOP_LED;
        double wanted = daylight ? NOON_HOUR - hoursPerDay / 2 : shop ? SHOP_FROM_HOUR : LAMP_FROM_HOUR;
        double first = Math.max(0, Math.min(wanted, LATEST_HOUR - hoursPerDay));
        long second = Math.min((long) DAY_SECONDS - 1, Math.round(first * 3600));
        return new LightHours(LocalTime.ofSecondOfDay(second), hoursPerDay, hoursPerDay, daylight);
    }

    /** Last light, local time. */
    public LocalTime until() {
        return from.plusSeconds(Math.round(spanHours * 3600));
    }

    /**
     * Hours of this light in a stretch of time, as hours of the brightness it has when lit: in a whole day {@link #hours}, at
     * night none, in an hour about noon up to 1.57.
     *
     * @param fromInclusive epoch second
     * @param untilExclusive epoch second; where it is not later there is no light
     * @param zone of the clock
     */
    public double within(long fromInclusive, long untilExclusive, ZoneId zone) {
        if (untilExclusive <= fromInclusive || hours == 0) {
            return 0;
        }
        LocalDate last = Instant.ofEpochSecond(untilExclusive).atZone(zone).toLocalDate();
        double lit = 0;
        LocalDate day =
                Instant.ofEpochSecond(fromInclusive).atZone(zone).toLocalDate().minusDays(1);
        for (; !day.isAfter(last); day = day.plusDays(1)) {
            long dawn = day.atTime(from).atZone(zone).toEpochSecond();
            lit += risen(untilExclusive - dawn) - risen(fromInclusive - dawn);
        }
        return lit * hours;
    }

    /** Share of a day's light that has come so many seconds after the first, 0 to 1. */
    private double risen(long seconds) {
        double share = Math.max(0, Math.min(1, seconds / (spanHours * 3600)));
        return daylight ? (1 - Math.cos(Math.PI * share)) / 2 : share;
    }
}
