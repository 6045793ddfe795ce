/**
 * Bottling day: one pure path from a plan to everything the day needs, the list to work through, and the batch that stands
 * on the shelf when it is done. Window, worksheet and commands show the same figures because they all come from here.
 */
package undercroft.bottling;
