/** The shelf and the batch beside it. */
package undercroft.view.shelf;
