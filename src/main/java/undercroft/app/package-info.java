/**
 * What a user can do, page by page, without a window: what the frame holds together lives here, each page has a package of
 * its own. Of JavaFX only beans and collections.
 */
package undercroft.app;
