/** Gauge experiments as files that others can read, and such files read back. */
package undercroft.report.experiment;
