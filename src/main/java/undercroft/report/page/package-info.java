/** The shelf as a page: its sections, each a part of the layout. */
package undercroft.report.page;
