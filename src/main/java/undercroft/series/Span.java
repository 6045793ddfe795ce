package undercroft.series;

/** A stretch of time in epoch seconds, from inclusive, until exclusive. */
public record Span(long fromInclusive, long untilExclusive) {
    public Span {
        if (untilExclusive < fromInclusive) {
            throw new IllegalArgumentException("a span cannot end before it begins");
        }
    }

    public long seconds() {
        return untilExclusive - fromInclusive;
    }

    public boolean contains(long epochSecond) {
        return epochSecond >= fromInclusive && epochSecond < untilExclusive;
    }

    public boolean overlaps(Span other) {
        return fromInclusive < other.untilExclusive && other.fromInclusive < untilExclusive;
    }
}
