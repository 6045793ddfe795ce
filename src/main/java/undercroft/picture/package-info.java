/** Which plots a batch, a place, a stock or a serving has. */
package undercroft.picture;
