/** Bottling day as the window shows it: plans, the pages of one, its list and timers, its papers. */
package undercroft.app.bottling;
