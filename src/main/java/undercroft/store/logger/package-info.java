/**
 * Any temperature logger's file: what it holds ({@link undercroft.store.logger.Inspection}), what a person decides about
 * it ({@link undercroft.store.logger.Choices}), and what came of it ({@link undercroft.store.logger.ImportedLog}).
 */
package undercroft.store.logger;
