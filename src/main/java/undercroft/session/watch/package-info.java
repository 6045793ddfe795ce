/** A cellar that is watched without a window: what comes in is saved, what wants doing is told, nothing else is done. */
package undercroft.session.watch;
