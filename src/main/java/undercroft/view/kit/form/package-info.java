/** Controls for the fields of a form, and the small windows forms are shown in. */
package undercroft.view.kit.form;
