/** What exists: the cellar, its places, batches, lots, readings, draws and servings. Immutable, checked when made. */
package undercroft.cellar;
