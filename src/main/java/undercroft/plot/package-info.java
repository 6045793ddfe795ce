/** Pictures as data: plots and their layers, laid out by pure code into marks that any pen can draw. Knows no toolkit. */
package undercroft.plot;
