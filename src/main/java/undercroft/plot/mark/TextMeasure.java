package undercroft.plot.mark;

/** Tells how wide a text will come out, so that layout needs no toolkit. */
@FunctionalInterface
public interface TextMeasure {
    /** Width in pixels. */
    double width(String text, TextStyle style);

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
