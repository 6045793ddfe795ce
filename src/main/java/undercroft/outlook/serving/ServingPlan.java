package undercroft.outlook.serving;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Serving;
import undercroft.outlook.lot.Alert;

/**
 * When the bottles of a pour go into the cold.
 *
 * @param chillFrom when to put them in; empty when it cannot be done in time
 * @param takeOut when to take them out, at or before the pour
 * @param readyByThen whether the beer is more likely ready than not when it goes into the cold, which stops it
 * @param probabilityReady that it is ready then, 0 to 1
 * @param chilling how they get cold; empty in a plan made by hand
 * @param concerns what stands in the way, worst first
 */
public record ServingPlan(
        Serving serving,
        Optional<Instant> chillFrom,
        Instant takeOut,
        boolean readyByThen,
        String why,
        double probabilityReady,
        Optional<Chilling> chilling,
        List<Concern> concerns) {
    /** How to pour beer that has its yeast in the bottle; common practice, no source. */
    public static final String POURING_NOTE =
            "Stand the bottle upright in the cold, open it without shaking, pour slowly in one go"
                    + " and leave the last 10 to 20 mL with the sediment.";

    public ServingPlan {
        concerns = List.copyOf(concerns);
    }

    /** A plan without its details. */
    public ServingPlan(Serving serving, Optional<Instant> chillFrom, Instant takeOut, boolean readyByThen, String why) {
        this(serving, chillFrom, takeOut, readyByThen, why, readyByThen ? 1 : 0, Optional.empty(), List.of());
    }

    public boolean has(Concern.Kind kind) {
        return concerns.stream().anyMatch(concern -> concern.kind() == kind);
    }

    /** The worst of the concerns; clear when nothing stands in the way. */
    public Alert alert() {
        return concerns.stream().map(Concern::alert).reduce(Alert.CLEAR, Alert::or);
    }
}
