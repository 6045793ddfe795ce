/** Physical values with their units: checked on the way in, read and written in metric and US units. */
package undercroft.quantity;
