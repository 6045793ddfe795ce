/** Forms about a batch: the batch itself, its lots, and what happens to them. */
package undercroft.app.form.batch;
