/** What is printed to be used by hand: the worksheet of a bottling day and labels for crates. */
package undercroft.report.sheet;
