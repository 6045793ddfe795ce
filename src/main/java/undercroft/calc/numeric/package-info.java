/**
 * Numbers that know nothing of beer: a few functions from tables, quantiles of weighted values, evenly spread normal points,
 * and where to look again. Pure; each says how near it comes to the function it stands for.
 */
package undercroft.calc.numeric;
