package undercroft.outlook.lot;

import undercroft.calc.spell.WarmestWeek;

/**
 * How likely the strongest bottle left of a lot passes its working pressure where it stands: probabilities, 0 to 1.
 *
 * @param now at this instant
 * @param ahead once everything fermentable is gone, in the warmest week of the weeks ahead; or at a hotter hour of them
 * @param warmestYear once everything fermentable is gone, in the warmest week of its place's year
 * @param aheadCelsius mean of the warmest week ahead, °C
 * @param yearCelsius mean of the warmest week of the year, never below the one ahead, °C
 * @param yearSource what that rests on
 */
public record PassingChance(
        double now,
        double ahead,
        double warmestYear,
        double aheadCelsius,
        double yearCelsius,
        WarmestWeek.Source yearSource) {}
