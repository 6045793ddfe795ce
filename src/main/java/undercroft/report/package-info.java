/** The shelf on paper and for other programs: report.json, the page with its pictures, and the series as CSV. */
package undercroft.report;
