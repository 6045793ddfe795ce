package undercroft.app;

import undercroft.app.Pages.Page;

/** What of a cellar was looked at last. {@code batchId} may be empty, or that of a batch that went since. */
public record LastView(Page page, String batchId) {
    public static final LastView SHELF = new LastView(Page.SHELF, "");
}
