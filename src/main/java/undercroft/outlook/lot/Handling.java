package undercroft.outlook.lot;

import java.util.EnumSet;
import java.util.Set;

/**
 * What to do first with the bottles of a lot that pressure or frost may burst. It follows from the lot's verdict and from
 * how long it has been cold; every screen, page and list says this and nothing of its own.
 */
public enum Handling {
    /** Nothing out of the ordinary. */
    NONE,
    /** Within their limit now, but not later: the closed box goes somewhere cooler while it may be carried. */
    MOVE_NOW,
    /** Not to be carried: the closed box is cooled where it stands for a day, and then moved cold. */
    COOL_WHERE_IT_STANDS,
    /** Cold for a day: opened over a sink or discarded, and never warmed again. */
    OPEN_COLD,
    /** Frozen, or lately so: thawed in the closed box in the cold. */
    THAW_IN_THE_COLD;

    private static final Set<Cause.Kind> NOT_TO_BE_CARRIED = EnumSet.of(
            Cause.Kind.BURST,
            Cause.Kind.PEAK_PAST_OVER_WORKING_PRESSURE,
            Cause.Kind.READINGS_ABOVE_SUGAR,
            Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE,
            Cause.Kind.GLASS_WORN);

    /** Whether the bottles are neither to be carried nor to be served for now. */
    public boolean isHeldBack() {
        return this != NONE && this != MOVE_NOW;
    }

    static Handling of(LotOutlook lot) {
        Verdict verdict = lot.verdict();
        if (isGrave(verdict, EnumSet.of(Cause.Kind.FROZEN, Cause.Kind.WAS_FROZEN))) {
            return THAW_IN_THE_COLD;
        }
        if (isGrave(verdict, NOT_TO_BE_CARRIED)) {
            return lot.pressure().past().rest().isLongEnough() ? OPEN_COLD : COOL_WHERE_IT_STANDS;
        }
        return verdict.alert(Cause.Topic.PRESSURE) == Alert.ACT ? MOVE_NOW : NONE;
    }

    private static boolean isGrave(Verdict verdict, Set<Cause.Kind> kinds) {
        return verdict.causes().stream().anyMatch(cause -> cause.alert() == Alert.ACT && kinds.contains(cause.kind()));
    }
}
