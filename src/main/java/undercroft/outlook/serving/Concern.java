package undercroft.outlook.serving;

import undercroft.outlook.lot.Alert;

/** Something that stands in the way of a serving; its figures are those of the plan. */
public record Concern(Kind kind, Alert alert) {
    /** What it is about. */
    public enum Kind {
        /** The bottles may be over their working pressure. */
        PRESSURE,
        NEVER_READY,
        MAY_NOT_BE_READY,
        /** More bottles are promised of the batch than are left. */
        SAME_BOTTLES,
        /** They cannot get cold and clear in time. */
        TOO_LATE,
        /** The cold place is warmer than what is wanted in the glass. */
        TOO_WARM_A_PLACE,
        /** They would have to stay in the freezer longer than they may. */
        TOO_LONG_IN_FREEZER,
        FREEZER_ALARM
    }
}
