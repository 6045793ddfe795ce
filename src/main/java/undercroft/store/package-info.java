/**
 * The cellar folder, an open format.
 *
 * <pre>
 * my-cellar/
 *   cellar.json                   everything the user has told, schema 2
 *   temperatures/&lt;place-id&gt;.csv   time,celsius: UTC to the second, rising, at most three decimals
 *   history/cellar-&lt;time&gt;.json    earlier versions: the newest 30, and the last of each day for 30 days
 *   history/cellar-schema-1-&lt;time&gt;.json  the file before it was brought to schema 2
 *   cellar.lock                   held while a writer has the folder open
 * </pre>
 *
 * <p>In {@code cellar.json} every number tells its unit in its key, times are ISO 8601 in UTC, list entries are named by
 * ids, and what is not known is null. Keys this program does not know stay where they are. Schema 1 is read,
 * and brought to schema 2 at the first change, after a backup that stays for good. A file of a newer schema is looked at
 * and not touched. {@code cellar.json.unreadable-<time>} is a file the user had moved aside;
 * {@code cellar-unsaved-<time>.json} is what could not be saved because another program had changed the file.
 *
 * <p>The rooms inside: {@code json} knows what stands in the file, {@code disk} is the only one that writes, {@code logger}
 * reads what loggers write. No other room sees the JSON and CSV libraries.
 */
package undercroft.store;
