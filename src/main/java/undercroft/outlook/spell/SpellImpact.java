package undercroft.outlook.spell;

import java.time.Instant;
import java.util.Comparator;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.SpellExposure;
import undercroft.quantity.Interval;

/**
 * What a spell did to a lot, judged once.
 *
 * @param exposure what it did to the pressure in the bottles
 * @param shelfDaysCost days at 20 °C used beyond what the usual temperature would have used
 * @param carbonationDaysGained reference days (21 °C) of conditioning gained
 */
public record SpellImpact(
        String batchId,
        String batchName,
        String lotId,
        SpellExposure exposure,
        double shelfDaysCost,
        double carbonationDaysGained,
        Alert alert,
        Advice advice) {
    /** The hardest pressed lot first. */
    static final Comparator<SpellImpact> WORST_FIRST = Comparator.comparing(SpellImpact::alert)
            .thenComparingDouble(impact -> impact.peakGaugeBar().high())
            .reversed();

    /** What to do about bottles after a spell; the first things first. */
    public enum Advice {
        /** They may still be over their working pressure: cold first, hands later. */
        COOL_BEFORE_TOUCHING,
        /** They may have been over it and have been cold for a day: opened over a sink, or discarded. */
        OPEN_COLD,
        /** They may have been over it and have borne much: careful hands, and first in turn. */
        DRINK_FIRST,
        /** They came near: cooler from now on. */
        KEEP_COOLER,
        /** They may have frozen: look at the caps before moving them. */
        LOOK_FOR_LIFTED_CAPS,
        /** No sign of excess pressure, or of anything else to see to. */
        NONE,
        /** No bottle is left. */
        GONE
    }

    /** From when the lot was in the spell. */
    public Instant since() {
        return Instant.ofEpochSecond(exposure.stay().fromInclusive());
    }

    /** Until when the lot was in the spell. */
    public Instant until() {
        return Instant.ofEpochSecond(exposure.stay().untilExclusive());
    }

    public Interval peakGaugeBar() {
        return exposure.peakGaugeBar();
    }

    /** Hours in which the 95 % pressure was above the working pressure. */
    public double hoursOverWorkingPressure() {
        return exposure.hoursOverWorkingPressure();
    }
}
