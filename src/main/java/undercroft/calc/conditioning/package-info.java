/**
 * Refermentation in the bottle: how fast the priming sugar turns into carbonation, how sure that is, and how readings
 * sharpen it. One model, an ensemble of its uncertain constants, and an exact course for each member.
 */
package undercroft.calc.conditioning;
