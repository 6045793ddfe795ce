/**
 * How long bottles take to get cold, to clear and to warm up again, when they must go in for a given evening, and when they
 * freeze.
 */
package undercroft.calc.chill;
