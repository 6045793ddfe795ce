package undercroft.outlook.spell;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import undercroft.cellar.Place;
import undercroft.outlook.lot.Alert;

/**
 * A warm or cold spell of a place, and what it did to the bottles that stood there.
 *
 * @param certain false where readings are missing in it, so that it may have been otherwise
 * @param impacts one for each lot that felt it, the worst first
 */
public record SpellReview(
        Place place,
        Instant from,
        Instant until,
        double peakCelsius,
        boolean warm,
        boolean certain,
        List<SpellImpact> impacts) {
    public SpellReview {
        impacts = impacts.stream().sorted(SpellImpact.WORST_FIRST).toList();
    }

    /** For each batch what became of its hardest pressed lot, the worst batch first. */
    public List<SpellImpact> worstOfEachBatch() {
        Set<String> told = new HashSet<>();
        List<SpellImpact> worst = new ArrayList<>(impacts);
        worst.removeIf(impact -> !told.add(impact.batchId()));
        return List.copyOf(worst);
    }

    /** What it did to a lot, if it stood there. */
    public Optional<SpellImpact> impact(String batchId, String lotId) {
        return impacts.stream()
                .filter(impact ->
                        impact.batchId().equals(batchId) && impact.lotId().equals(lotId))
                .findFirst();
    }

    public Alert alert() {
        return impacts.stream().map(SpellImpact::alert).reduce(Alert.CLEAR, Alert::or);
    }
}
