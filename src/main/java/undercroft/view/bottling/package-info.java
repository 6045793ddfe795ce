/** The page on which a bottling day is planned, worked through and ended. */
package undercroft.view.bottling;
