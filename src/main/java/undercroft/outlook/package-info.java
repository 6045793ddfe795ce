/**
 * What the shelf looks like at an instant: one pure path from a {@link undercroft.cellar.Batch} and its temperatures to a
 * {@link undercroft.outlook.lot.BatchOutlook}, which window, report and commands all show.
 */
package undercroft.outlook;
