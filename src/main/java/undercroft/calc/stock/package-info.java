/**
 * How fast bottles go, and until when they last.
 */
package undercroft.calc.stock;
