/** Numbers in time: sorted epoch seconds with doubles, their gaps and bands, and thinning for a picture. */
package undercroft.series;
