/**
 * What the trade lists: sugars, bottles, glass colours, light, yeast, kinds of beer, each with its figures and where they
 * come from. One line here adds a kind everywhere. No equations live here.
 */
package undercroft.catalogue;
