/**
 * The page of servings without its window: what is promised, when it goes into the cold, which batch to take.
 */
package undercroft.app.servings;
