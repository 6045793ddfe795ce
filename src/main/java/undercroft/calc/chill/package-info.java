/**
 * How long bottles take to get cold, to clear and to warm up again, and when they must go in for a given evening.
 */
package undercroft.calc.chill;
