/** A logger's lines as text: characters, lines, cells, numbers, times and the clock they were written by. */
package undercroft.store.logger.text;
