/** What the shelf wants from a person in the next days. */
package undercroft.outlook.task;
