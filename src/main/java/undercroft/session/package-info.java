/** One open cellar: its workspace, forecasts and followed logs. */
package undercroft.session;
