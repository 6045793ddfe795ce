/** What is asked of somebody who has no cellar yet. */
package undercroft.app.start;
