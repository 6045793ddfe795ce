package undercroft.calc.ageing;

import undercroft.quantity.Interval;

/**
 * When a beer's keeping budget is used up.
 *
 * @param epochSeconds early, median and late; +∞ when it never is
 * @param beyondTrack whether the median lies after the track's end, so that it rests on the last year of the track going
 *     on as it was (as much of a year as there is)
 */
public record BestBefore(Interval epochSeconds, boolean beyondTrack) {}
