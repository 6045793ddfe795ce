package undercroft.plot;

import undercroft.plot.mark.Role;
import undercroft.series.TimeSeries;

/**
 * Amounts as a stepped fill from the foot of the axis: each value holds until the next, the last one until
 * {@code until}.
 *
 * @param label written near the end of the strip where there is room; empty for none
 */
public record StripLayer(TimeSeries steps, long until, Role role, String label) implements Layer {}
