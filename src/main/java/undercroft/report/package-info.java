/** What leaves the cellar on paper or screen: pictures of a batch, the shelf report, exports. */
package undercroft.report;
