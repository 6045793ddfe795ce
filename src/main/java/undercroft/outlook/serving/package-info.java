/** Which batch to serve, and when its bottles go into the cold. */
package undercroft.outlook.serving;
