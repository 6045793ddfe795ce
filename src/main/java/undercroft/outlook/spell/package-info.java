/** What the warm and cold spells of the places did to each lot. */
package undercroft.outlook.spell;
