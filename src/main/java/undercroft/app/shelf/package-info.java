/** The shelf, the page of a batch and the list of things to do, without their window. */
package undercroft.app.shelf;
