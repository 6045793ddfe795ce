package undercroft.report;

/** Grows a printable page. Whatever comes in as text is escaped; tags are only what this package writes. */
final class WorksheetHtml {
    private final StringBuilder page = new StringBuilder();

    /** Begins a page. */
    WorksheetHtml(String title, String style) {
        page.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>")
                .append(escaped(title))
                .append("</title>\n<style>")
                .append(style)
                .append("</style>\n</head>\n<body>\n");
    }

    /** Text as it may stand between tags or in a quoted attribute; control characters that HTML lacks are left out. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    if (isText(point)) {
                        safe.appendCodePoint(point);
                    }
                }
            }
        });
        return safe.toString();
    }

    private static boolean isText(int point) {
        if (point < 0x20) {
            return point == '\n' || point == '\t';
        }
        boolean control = point >= 0x7f && point <= 0x9f;
        boolean halfOfAPair = point >= 0xd800 && point <= 0xdfff;
        boolean nothing = point == 0xfffe || point == 0xffff;
        return !control && !halfOfAPair && !nothing;
    }

    WorksheetHtml open(String tag, String cssClass) {
        page.append('<').append(tag).append(" class=\"").append(cssClass).append("\">\n");
        return this;
    }

    WorksheetHtml close(String tag) {
        page.append("</").append(tag).append(">\n");
        return this;
    }

    WorksheetHtml element(String tag, String text) {
        page.append('<')
                .append(tag)
                .append('>')
                .append(escaped(text))
                .append("</")
                .append(tag)
                .append(">\n");
        return this;
    }

    WorksheetHtml element(String tag, String cssClass, String text) {
        page.append('<')
                .append(tag)
                .append(" class=\"")
                .append(cssClass)
                .append("\">")
                .append(escaped(text))
                .append("</")
                .append(tag)
                .append(">\n");
        return this;
    }

    /** A table row whose cells are all of one tag, {@code th} or {@code td}. */
    WorksheetHtml row(String cellTag, Iterable<String> cells) {
        page.append("<tr>");
        for (String cell : cells) {
            page.append('<')
                    .append(cellTag)
                    .append('>')
                    .append(escaped(cell))
                    .append("</")
                    .append(cellTag)
                    .append('>');
        }
        page.append("</tr>\n");
        return this;
    }

    /** The finished page. */
    String text() {
        return page + "</body>\n</html>\n";
    }
}
