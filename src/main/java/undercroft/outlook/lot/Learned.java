package undercroft.outlook.lot;

import undercroft.quantity.Interval;

/**
 * What earlier batches of this cellar taught of one.
 *
 * @param batches how many taught, 1 or more
 * @param readings how many readings they had
 * @param timesAsFast the usual days to carbonate over this brewer's with this yeast, 5, 50 and 95 %; 2 is twice as fast
 * @param isUnlike whether this batch's own readings speak against it, so that it is told without the others
 */
public record Learned(int batches, int readings, Interval timesAsFast, boolean isUnlike) {}
