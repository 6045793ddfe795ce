package undercroft.plot.mark;

/**
 * Draws marks on some surface. Colours come from the pen's palette: {@link Palette#textHex} for texts,
 * {@link Palette#hex} for all else. Clips do not nest. Lines end butt and join
 * round; strong texts are semi-bold.
 */
public interface Pen {
    void polyline(Mark.Polyline line);

    void polygon(Mark.Polygon area);

    void rect(Mark.Rect rect);

    void marker(Mark.Marker marker);

    void text(Mark.Text text);

    void beginClip(Frame frame);

    void endClip();
}
