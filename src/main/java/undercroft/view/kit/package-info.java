/** What every page is built of. */
package undercroft.view.kit;
