/** Forms about the whole cellar: settings, and the user's own bottles and sugars. */
package undercroft.app.form.cellar;
