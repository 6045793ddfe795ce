/** The window: the drawn shelf, the batch page, the strip of things to do. Plain Java; looks are in the style sheet. */
package undercroft.view;
