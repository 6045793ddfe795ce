/** What air and bottles in each place felt and will feel: the log cleaned, its lag, its spells, the days ahead. */
package undercroft.outlook.climate;
