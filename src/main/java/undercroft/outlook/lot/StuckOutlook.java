package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import undercroft.calc.conditioning.Stuck;

/**
 * Why a lot may never carbonate as planned, so that no date of readiness is promised.
 *
 * @param reasons none for a lot that gets on
 * @param stillSince since when its readings have not moved, where that is a reason
 * @param plateauSince since when the gauge of an experiment on the lot has not moved, wherever it stands
 */
public record StuckOutlook(Set<Stuck> reasons, Optional<Instant> stillSince, Optional<Instant> plateauSince) {
    public StuckOutlook {
        reasons =
                Collections.unmodifiableSet(reasons.isEmpty() ? EnumSet.noneOf(Stuck.class) : EnumSet.copyOf(reasons));
    }

    public boolean isStuck() {
        return !reasons.isEmpty();
    }
}
