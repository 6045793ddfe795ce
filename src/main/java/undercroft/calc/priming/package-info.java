/**
 * Priming: what carbon dioxide is already there, how much sugar a target needs, what a given amount of sugar gives, and
 * whether the fermentation was finished. Masses in grams, carbon dioxide in grams per litre of beer.
 */
package undercroft.calc.priming;
