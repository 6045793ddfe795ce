package undercroft.cellar;

import java.time.Duration;
import java.time.LocalTime;

/**
 * The hours of the day between which light falls on a place, by the cellar's clock. {@code until} at or before
 * {@code from} is of the next day, so that equal times mean all day and night.
 */
public record LitHours(LocalTime from, LocalTime until) {
    /** How long the stretch is, hours; above 0, at most 24. */
    public double length() {
        double hours = Duration.between(from, until).toSeconds() / 3600.0;
        return hours <= 0 ? hours + 24 : hours;
    }
}
