package undercroft.outlook.lot;

import undercroft.calc.chill.Frost;
import undercroft.calc.spell.FrostExposure;

/**
 * What cold can do to a lot's bottles, and what cold they have had.
 *
 * @param limits of the bottle with its beer
 * @param exposure since capping
 */
public record FrostOutlook(Frost limits, FrostExposure exposure) {}
