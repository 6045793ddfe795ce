/** What was seen of a batch and what it changed, without a window. */
package undercroft.app.evidence;
