/** What exists: the cellar, its places, batches, lots, readings, draws and pours. Immutable, checked when made. */
package undercroft.cellar;
