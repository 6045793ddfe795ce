package undercroft.outlook.lot;

import java.time.Instant;
import java.util.List;
import undercroft.cellar.Reading;
import undercroft.quantity.Interval;

/**
 * How what was seen of a batch changed what is calculated of it, step by step: told for the lot that limits it.
 *
 * @param before the lot as it would be told now, had nothing been read of the batch and nothing burst
 * @param now the lot as it is told
 * @param steps what was seen, in time
 * @param next what one more reading would teach, the best first; none while the batch is at rest and well known
 */
public record EvidenceCourse(LotOutlook before, LotOutlook now, List<Step> steps, List<Sharpening> next) {
    public EvidenceCourse {
        steps = List.copyOf(steps);
        next = List.copyOf(next);
    }

    /**
     * What was seen at one moment.
     *
     * @param read readings of that moment with what was foretold for them
     * @param burst bottles that burst then
     * @param heatLimitCelsius heat limit of the lot by all that was seen until then, told for the bottles there are now
     * @param finalVolumes carbonation at the end by all that was seen until then
     */
    public record Step(Instant at, List<Foretold> read, int burst, double heatLimitCelsius, Interval finalVolumes) {
        public Step {
            read = List.copyOf(read);
        }
    }

    /**
     * A reading beside what was foretold for it by what was known before.
     *
     * @param foretold 5, 50 and 95 %: bar of a gauge or a squeezed bottle, volumes of an opened one, specific gravity
     */
    public record Foretold(Reading reading, Interval foretold) {}

    /** A way to find out more. */
    public enum Kind {
        GAUGE,
        GRAVITY,
        OPENED,
        SQUEEZE
    }

    /**
     * What a reading today would teach on average.
     *
     * @param volumesWideNow width of the 5 to 95 % range of the carbonation at the end as it is
     * @param volumesWideAfter the same after the reading
     */
    public record Sharpening(Kind kind, double volumesWideNow, double volumesWideAfter) {
        private static final double WORTH_A_BOTTLE = 0.8;

        /** Whether it would cut the range by a fifth or more. */
        public boolean isWorthIt() {
            return volumesWideAfter <= WORTH_A_BOTTLE * volumesWideNow;
        }
    }
}
