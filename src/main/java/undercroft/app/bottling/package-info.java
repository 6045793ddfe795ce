/** Bottling day as the window shows it: drafts, the pages of one, its list and timers, its papers. */
package undercroft.app.bottling;
