package undercroft.app.form.place;

import undercroft.wording.Messages;

/** How bottles stand together, in words, with the hours they lag the air by (derived and assumed, see the lag of bottles). */
public enum Stacking {
    SINGLE("single", 2),
    CRATE("crate", 3),
    STACK("stack", 6),
    PACKED("packed", 12),
    OWN("own", Double.NaN);

    private final String key;
    private final double lagHours;

    Stacking(String key, double lagHours) {
        this.key = key;
        this.lagHours = lagHours;
    }

    /** What lags by these hours; {@link #OWN} for hours of no kind. */
    static Stacking of(double lagHours) {
        for (Stacking kind : values()) {
            if (kind.lagHours == lagHours) {
                return kind;
            }
        }
        return OWN;
    }

    public double lagHours() {
        return lagHours;
    }

    String words(Messages messages) {
        return messages.of("form.stacking." + key);
    }
}
