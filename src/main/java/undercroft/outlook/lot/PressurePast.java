package undercroft.outlook.lot;

import java.time.Instant;
import undercroft.calc.spell.ColdRest;
import undercroft.quantity.Interval;

/**
 * The highest pressure the strongest bottle left of a lot has had.
 *
 * @param peak bar gauge
 * @param peakAt when
 * @param chance that it was over its working pressure then, 0 to 1
 * @param lastOver the last instant at which its 95 % pressure was over; the peak where it never was
 * @param rest how long the bottles have been cold since they were last over while warm, or since one burst
 */
public record PressurePast(Interval peak, Instant peakAt, double chance, Instant lastOver, ColdRest rest) {}
