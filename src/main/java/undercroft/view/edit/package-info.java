/** The dialogs in which a person tells the cellar something: small, one form each, nothing changed until saved. */
package undercroft.view.edit;
