package undercroft.plot.mark;

/** Tells how wide a text will come out, so that layout needs no toolkit. */
@FunctionalInterface
public interface TextMeasure {
    /** Width in pixels. */
    double width(String text, TextStyle style);

    /** The text, cut short with an ellipsis where the room, in pixels, is less than its width. */
    default String fitted(String text, TextStyle style, double room) {
        if (width(text, style) <= room) {
            return text;
        }
        String cut = "";
        for (int kept = text.codePointCount(0, text.length()) - 1; kept > 0; kept--) {
            cut = text.substring(0, text.offsetByCodePoints(0, kept)).stripTrailing() + "…";
            if (width(cut, style) <= room) {
                return cut;
            }
        }
        return cut;
    }

    /**
     * A measure for places without a toolkit: rough widths of the letters of a sans-serif face in parts of its size,
     * chosen a little generous so that texts laid out with it do not touch.
     */
    static TextMeasure rough() {
        return (text, style) -> {
            double em = 0;
            for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
                em += roughEm(text.codePointAt(i));
            }
            return em * style.sizePixels() * (style.isStrong() ? 1.06 : 1);
        };
    }

    private static double roughEm(int letter) {
        if ("iljtfrI.,:;'|!()[] ·".indexOf(letter) >= 0) {
            return 0.35;
        }
        if ("mwMW@%—".indexOf(letter) >= 0) {
            return 0.9;
        }
        if (letter >= 0x2E80) {
            return 1.05;
        }
        return Character.isUpperCase(letter) ? 0.72 : 0.62;
    }
}
