/** What a user does to a cellar, one class each, pure: a form of the window and a command do it through the same one. */
package undercroft.session.change;
