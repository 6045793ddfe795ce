/** What the beer may hold to ferment beside what was written down, and how far a dose may be off: distributions, not figures. */
package undercroft.calc.extract;
