/** Times and values on pixels, and where their ticks stand. */
package undercroft.plot.scale;
