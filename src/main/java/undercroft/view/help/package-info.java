/** The window with the help. */
package undercroft.view.help;
