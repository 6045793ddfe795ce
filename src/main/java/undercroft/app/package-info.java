/**
 * What a user can do, without a window: the workspace with its undo, the forecasts behind the pictures, view models and
 * background work. Of JavaFX only beans and collections.
 */
package undercroft.app;
