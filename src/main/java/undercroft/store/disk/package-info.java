/** The one room that writes to a disk, for the whole program. */
package undercroft.store.disk;
