/** Which plots there are of a batch, a place, a spell, a supposition, a stock, a serving, a bottling day and an import. */
package undercroft.picture;
