/** The evidence page. */
package undercroft.view.evidence;
