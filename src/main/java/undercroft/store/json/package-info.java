/**
 * {@code cellar.json} and everything in it: bytes to records and back. A twin beside each record reads and writes it by
 * hand, so that several faults are told with their path and unknown keys are kept.
 */
package undercroft.store.json;
