package undercroft.markup;

import java.util.Locale;

/** The head every page and sheet has; none loads anything from elsewhere. */
public final class PageHead {
    private PageHead() {}

    /** Begins a page up to its open body. */
    public static Markup begin(Locale language, String title, String css) {
        return begin(Markup.html(), language, title, css);
    }

    /** The same on a page that goes out as it grows. */
    public static Markup begin(Markup page, Locale language, String title, String css) {
        page.open("html", "lang", language.getLanguage(), "xmlns", "http://www.w3.org/1999/xhtml");
        page.open("head").empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "generator", "content", "Undercroft");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.element("title", title).style(css).close("head");
        return page.open("body");
    }

    public static String end(Markup page) {
        return page.close("body").close("html").finished();
    }
}
