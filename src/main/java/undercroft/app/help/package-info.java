/** The help: guide, glossary, how the numbers are made, keys and licences, as text that a window shows. */
package undercroft.app.help;
