/**
 * From a place's raw air temperatures to what its bottles felt and will feel: cleaning, the lag of the bottles, gaps
 * told as gaps, warm and cold spells, and an outlook with its spread.
 */
package undercroft.calc.spell;
