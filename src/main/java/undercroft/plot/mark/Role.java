package undercroft.plot.mark;

import java.util.Locale;

/** What a mark stands for; a {@link Palette} turns it into a colour. */
public enum Role {
    PAPER,
    INK,
    FAINT_INK,
    GRID,
    FRAME,
    CARBONATION,
    PRESSURE,
    TEMPERATURE,
    ROOM,
    LIGHT,
    AGE,
    READY,
    SPELL,
    GAP,
    LIMIT,
    NOW;

    /** Name in a style sheet: {@code faint-ink}. */
    public String cssName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
