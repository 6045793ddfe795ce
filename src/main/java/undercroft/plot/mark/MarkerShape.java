package undercroft.plot.mark;

/** Shape of a small sign at a point. */
public enum MarkerShape {
    CIRCLE,
    TRIANGLE,
    DIAMOND,
    SQUARE
}
