/** All that a person reads. */
package undercroft.wording;
