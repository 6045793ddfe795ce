package undercroft.outlook.lot;

import java.util.List;
import java.util.Optional;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.LotReadings;
import undercroft.calc.conditioning.Observation;
import undercroft.calc.conditioning.Pace;
import undercroft.calc.conditioning.Refermentation;
import undercroft.calc.learning.Lessons;

/**
 * The possible beers of a batch by all that was seen of it: alone, and with what earlier batches taught.
 *
 * @param alone by this batch alone
 * @param taught with what the others taught; empty where they taught nothing, or this one is unlike them
 * @param learned what to say of that; empty where there was nothing to learn from
 * @param isRead whether anything was read of the batch itself, bursts apart
 */
record Beliefs(
        ConditioningEnsemble alone, Optional<ConditioningEnsemble> taught, Optional<Learned> learned, boolean isRead) {
    private static final int MEMBERS = 512;

    /** By this batch alone. */
    static ConditioningEnsemble alone(Refermentation beer, List<LotReadings> readings) {
        return ConditioningEnsemble.of(beer, MEMBERS).updated(readings);
    }

    /** Where nothing is learned from others. */
    static Beliefs untaught(ConditioningEnsemble alone, List<LotReadings> readings) {
        return new Beliefs(alone, Optional.empty(), Optional.empty(), isRead(readings));
    }

    private static boolean isRead(List<LotReadings> readings) {
        return readings.stream()
                .flatMap(lot -> lot.readings().stream())
                .anyMatch(reading -> !(reading instanceof Observation.Bursts));
    }

    static Beliefs of(ConditioningEnsemble alone, List<LotReadings> readings, Lessons lessons) {
        if (lessons.isEmpty()) {
            return untaught(alone, readings);
        }
        Refermentation beer = alone.refermentation();
        Optional<ConditioningEnsemble> taught = lessons.prior()
                .map(known -> ConditioningEnsemble.of(beer, MEMBERS, known).updated(readings));
        boolean unlike = taught.filter(each -> Lessons.isUnlike(each.evidenceRatio(alone)))
                .isPresent();
        return new Beliefs(
                alone,
                taught.filter(each -> !unlike),
                lessons.brewersPart()
                        .map(part -> new Learned(
                                lessons.earlier().size(), lessons.readings(), Pace.timesAsFast(beer, part), unlike)),
                isRead(readings));
    }

    /** What the dates are told by. */
    ConditioningEnsemble clock() {
        return taught.orElse(alone);
    }

    /** Whether pressures are told by the worse of both: what others taught must not lower one while nobody has read this batch. */
    boolean holdsTheWorse() {
        return taught.isPresent() && !isRead;
    }
}
