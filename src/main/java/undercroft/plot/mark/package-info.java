/** What a laid-out picture consists of, placed in pixels with roles for colours, and the pens that draw it. */
package undercroft.plot.mark;
