package undercroft.outlook.serving;

import java.util.List;

/**
 * A batch that might be served on a day.
 *
 * @param probabilityReady that it is ready by then, 0 to 1
 * @param free bottles that are left and promised to no other serving
 * @param promised bottles promised to other servings to come
 * @param enough whether the free ones are as many as wanted
 * @param shelfDaysCost what the warm spells of the last months cost it, days at 20 °C
 * @param score by which choices are ranked, higher first
 * @param reasons for it or against it, beside its readiness and its number
 */
public record ServingChoice(
        String batchId,
        double probabilityReady,
        int free,
        int promised,
        boolean enough,
        double shelfDaysCost,
        double score,
        List<Reason> reasons) {
    /** From this chance on it may be ready at all. */
    private static final double LEAST_CHANCE = 0.05;

    public ServingChoice {
        reasons = List.copyOf(reasons);
    }

    public boolean mayBeReady() {
        return probabilityReady >= LEAST_CHANCE;
    }

    /** What speaks for a batch, or against it. */
    public enum Reason {
        PAST_BEST_BEFORE,
        BEST_BEFORE_SOON,
        LIGHT,
        NEAR_WORKING_PRESSURE,
        WARM_SPELLS,
        /** The strongest bottle may be over its working pressure: cold first. */
        OVER_WORKING_PRESSURE
    }
}
