/** What is typed into the window's dialogs before it becomes part of a cellar: fields, their faults, what saving makes of them. */
package undercroft.app.form;
