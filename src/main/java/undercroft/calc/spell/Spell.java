package undercroft.calc.spell;

import undercroft.series.Span;

/**
 * A stretch in which a place's bottles were warmer or colder than they are used to, or beyond a limit.
 *
 * @param peakCelsius warmest of a warm spell, coldest of a cold one
 * @param kelvinDays by how much and how long, K·d, 0 or more, counted from the baseline
 * @param baselineCelsius what the bottles were used to when it began; for {@link Cause#LIMIT} the limit
 * @param certain false where readings are missing inside it or at its beginning or end
 */
public record Spell(
        Kind kind,
        Span span,
        double peakCelsius,
        double kelvinDays,
        double baselineCelsius,
        boolean certain,
        Cause cause) {
    /** Which way it went. */
    public enum Kind {
        WARM,
        COLD
    }

    /** Why it counts. */
    public enum Cause {
        /** Unusual for this place. */
        UNUSUAL,
        /** Usual or not, beyond a limit that was set. */
        LIMIT
    }

    /** Length in days. */
    public double days() {
        return span.seconds() / 86_400.0;
    }
}
