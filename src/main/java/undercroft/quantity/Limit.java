package undercroft.quantity;

/**
 * A quantity that must not be passed: whoever words it rounds it down.
 *
 * @param quantity a {@link Pressure}, {@link Temperature} or {@link Carbonation}
 */
public record Limit(Object quantity) {}
