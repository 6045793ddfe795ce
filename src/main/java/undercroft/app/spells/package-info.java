/** The page of warm and cold spells and of what might happen, without a window. */
package undercroft.app.spells;
