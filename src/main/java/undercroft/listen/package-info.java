/**
 * Live sensors: messages of a broker in, samples out. The one room that opens the network, to the one address that the
 * user's own settings name.
 */
package undercroft.listen;
