/** The page of warm and cold spells in the window. */
package undercroft.view.spells;
