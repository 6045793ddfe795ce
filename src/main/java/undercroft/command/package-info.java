/** What can be asked from a terminal: one class a command, the same calculations as the window. */
package undercroft.command;
