package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.quantity.InvalidInput;
import undercroft.series.Track;

/**
 * What was read on bottles that shared one history.
 *
 * @param readings at least one, in any order; kept in order of time. One from before capping is refused with
 *     {@link InvalidInput}
 * @param bottle temperature of those bottles, °C; must reach from capping to the last reading
 * @param cappedEpochSecond when they were closed
 * @param pressure what a gauge on them shows; for a squeezed bottle it is asked with no air at all
 * @param glass what the bottles bear; empty for plastic, which creeps instead, so that its bursts say nothing
 */
public record LotReadings(
        List<Observation> readings,
        Track bottle,
        long cappedEpochSecond,
        PressureModel pressure,
        Optional<GlassStrength> glass) {
    public LotReadings {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("there is no reading");
        }
        // One order for all, so that sums come out the same to the last digit.
        List<Observation> inOrder = new ArrayList<>(readings);
        inOrder.sort(Comparator.comparingLong(Observation::epochSecond).thenComparing(Observation::toString));
        if (inOrder.get(0).epochSecond() < cappedEpochSecond) {
            throw new InvalidInput("readings", "cellar.fault.reading-early");
        }
        if (inOrder.get(inOrder.size() - 1).epochSecond() > bottle.timeAt(bottle.size() - 1)) {
            throw new IllegalArgumentException("the track ends before the last reading");
        }
        readings = List.copyOf(inOrder);
    }

    boolean hasBursts() {
        return readings.stream().anyMatch(Observation.Bursts.class::isInstance);
    }

    /** The same readings without those of bursts; empty where none is left. */
    Optional<LotReadings> withoutBursts() {
        List<Observation> rest = readings.stream()
                .filter(reading -> !(reading instanceof Observation.Bursts))
                .toList();
        return rest.isEmpty()
                ? Optional.empty()
                : Optional.of(new LotReadings(rest, bottle, cappedEpochSecond, pressure, glass));
    }

    /** The same, of whose bursts only is heard that they happened. */
    LotReadings withoutSurvivors() {
        List<Observation> heard = readings.stream()
                .map(reading -> reading instanceof Observation.Bursts bursts ? bursts.withoutSurvivors() : reading)
                .toList();
        return new LotReadings(heard, bottle, cappedEpochSecond, pressure, glass);
    }

    /** Readings none of which is a burst. */
    public LotReadings(List<Observation> readings, Track bottle, long cappedEpochSecond, PressureModel pressure) {
        this(readings, bottle, cappedEpochSecond, pressure, Optional.empty());
    }
}
