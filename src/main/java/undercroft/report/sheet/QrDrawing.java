package undercroft.report.sheet;

import io.nayuki.qrcodegen.QrCode;
import undercroft.markup.Markup;

/** A link as a code for a phone's camera (ISO/IEC 18004), drawn as one path. */
final class QrDrawing {
    /** Clear modules around the code that the standard asks for. */
    private static final int QUIET = 4;

    private QrDrawing() {}

    static void draw(Markup page, String link, String title) {
        QrCode code = QrCode.encodeText(link, QrCode.Ecc.MEDIUM);
        StringBuilder modules = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    modules.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        int size = code.size + 2 * QUIET;
        page.open(
                "svg",
                "class",
                "code",
                "role",
                "img",
                "viewBox",
                -QUIET + " " + -QUIET + " " + size + " " + size,
                "shape-rendering",
                "crispEdges");
        page.element("title", title).element("desc", link);
        page.empty("path", "d", modules.toString()).close("svg");
    }
}
