package undercroft.outlook.serving;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.calc.chill.QuickChill;
import undercroft.cellar.Serving;
import undercroft.outlook.lot.Alert;

/**
 * When the bottles of a serving go into the cold.
 *
 * @param inTheCold whether they stand in the cold place already
 * @param chillFrom when they go in, or went in; empty when it cannot be done in time
 * @param takeOut when to take them out, at or before the serving
 * @param probabilityReady that the beer is ready when it goes into the cold, which stops it, 0 to 1
 * @param promised bottles of the batch promised to all servings to come
 * @param chilling how they get cold
 * @param quick the fastest way, for when there is no time left
 * @param concerns what stands in the way, worst first
 */
public record ServingPlan(
        Serving serving,
        boolean inTheCold,
        Optional<Instant> chillFrom,
        Instant takeOut,
        double probabilityReady,
        int promised,
        Chilling chilling,
        QuickChill quick,
        List<Concern> concerns) {
    public ServingPlan {
        concerns = concerns.stream()
                .sorted(Comparator.comparing(Concern::alert).reversed())
                .toList();
    }

    /** Whether the beer is more likely ready than not. */
    public boolean readyByThen() {
        return probabilityReady >= 0.5;
    }

    public boolean has(Concern.Kind kind) {
        return concerns.stream().anyMatch(concern -> concern.kind() == kind);
    }

    /** The worst of the concerns; clear when nothing stands in the way. */
    public Alert alert() {
        return concerns.stream().map(Concern::alert).reduce(Alert.CLEAR, Alert::or);
    }
}
