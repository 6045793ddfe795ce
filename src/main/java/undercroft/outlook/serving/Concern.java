package undercroft.outlook.serving;

import undercroft.outlook.lot.Alert;

/** Something that stands in the way of a pour, in a sentence with what to do. */
public record Concern(Kind kind, Alert alert, String sentence) {
    /** What it is about. */
    public enum Kind {
        TOO_LATE,
        TOO_WARM_A_PLACE,
        NEVER_READY,
        MAY_NOT_BE_READY,
        SAME_BOTTLES,
        FREEZER,
        PRESSURE
    }
}
