/** Forms about a place: what it is like, and how temperatures get into it. */
package undercroft.app.form.place;
