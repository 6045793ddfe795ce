/**
 * The Pours page: what is promised, when it goes into the cold, and which batch to take.
 */
package undercroft.view.servings;
