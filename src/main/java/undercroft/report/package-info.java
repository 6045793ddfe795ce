/** The shelf for other programs (report.json, series, calendar), what commands answer, and what a report consists of. */
package undercroft.report;
