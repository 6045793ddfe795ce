package undercroft.outlook.lot;

import undercroft.quantity.Interval;
import undercroft.series.Span;

/**
 * What a spell did to the pressure in a lot's strongest bottle.
 *
 * @param spell the spell of the place
 * @param stay the part of it in which the lot stood there
 * @param peakGaugeBar highest while it stood there
 * @param hoursOverWorkingPressure hours in which the 95 % pressure was above the working pressure
 * @param memoryBeforeBar all pressure borne until the spell as one that acts for 60 seconds
 * @param memoryAfterBar the same after it
 * @param mayHaveBeenFull whether warmth may have swollen the beer until it filled the bottle
 */
public record SpellExposure(
        String placeId,
        Span spell,
        Span stay,
        Interval peakGaugeBar,
        double hoursOverWorkingPressure,
        Interval memoryBeforeBar,
        Interval memoryAfterBar,
        boolean mayHaveBeenFull) {}
