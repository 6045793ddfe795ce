/** The page on which one begins. */
package undercroft.view.start;
