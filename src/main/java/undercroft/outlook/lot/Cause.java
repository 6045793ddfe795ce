package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * One reason why a lot wants attention, with the figures that made it one.
 *
 * @param lotId the lot it is about; empty where it is the whole batch
 * @param since when it was seen, began or will begin, where that has a date
 */
public record Cause(
        Kind kind, Alert alert, Optional<String> lotId, Optional<Instant> since, Map<CauseFigure, Double> figures) {
    /** The gravest first; of equal gravity what was seen with the eye comes before what was calculated. */
    public static final Comparator<Cause> GRAVEST_FIRST =
            Comparator.comparing(Cause::alert).reversed().thenComparing(Cause::kind);

    public Cause {
        EnumMap<CauseFigure, Double> ordered = new EnumMap<>(CauseFigure.class);
        ordered.putAll(figures);
        figures = Collections.unmodifiableMap(ordered);
    }

    /** A cause about a lot, without a date. */
    static Cause of(Kind kind, Alert alert, String lotId, Map<CauseFigure, Double> figures) {
        return new Cause(kind, alert, Optional.of(lotId), Optional.empty(), figures);
    }

    /**
     * One of its figures.
     *
     * @throws IllegalArgumentException when this kind of cause has no such figure
     */
    public double figure(CauseFigure figure) {
        Double value = figures.get(figure);
        if (value == null) {
            throw new IllegalArgumentException(kind + " has no " + figure);
        }
        return value;
    }

    /** What a cause is about. */
    public enum Topic {
        PRESSURE,
        FROST,
        READINGS,
        LIGHT,
        YEAST,
        AGE
    }

    /** When a cause bites. */
    public enum Bite {
        NOW,
        AHEAD,
        PAST
    }

    /** Kinds of cause; of those with the same alert the first one leads. */
    public enum Kind {
        /** A bottle of the batch burst. */
        BURST(Topic.PRESSURE, Bite.PAST),
        /** Ice and beer want more room than the bottle has, or ice forms. */
        FROZEN(Topic.FROST, Bite.NOW),
        /** It was so cold that bottles may have burst. */
        WAS_FROZEN(Topic.FROST, Bite.PAST),
        /** Lately the strongest bottle may have been over its working pressure, further than it may be now. */
        PEAK_PAST_OVER_WORKING_PRESSURE(Topic.PRESSURE, Bite.PAST),
        /** A reading lies above all that the sugar can give. */
        READINGS_ABOVE_SUGAR(Topic.READINGS, Bite.NOW),
        STRONGEST_OVER_WORKING_PRESSURE(Topic.PRESSURE, Bite.NOW),
        /** The glass may have borne all that its class stands in a 60-second test. */
        GLASS_WORN(Topic.PRESSURE, Bite.PAST),
        PEAK_AHEAD_OVER_WORKING_PRESSURE(Topic.PRESSURE, Bite.AHEAD),
        /** Perhaps within its limit in the weeks ahead, but not in the warmest week of its place's year. */
        OVER_IN_WARMEST_WEEK(Topic.PRESSURE, Bite.AHEAD),
        STRONGEST_OVER_CAUTION(Topic.PRESSURE, Bite.NOW),
        /** A bottle burst and the user said why, but no later gauge or gravity has borne it out. */
        BURST_SETTLED(Topic.PRESSURE, Bite.PAST),
        /** Some time ago the strongest bottle may have been over its working pressure. */
        OLD_PEAK_OVER_WORKING_PRESSURE(Topic.PRESSURE, Bite.PAST),
        /** Readings that do not fit what is calculated. */
        READINGS_DISAGREE(Topic.READINGS, Bite.NOW),
        /** A taste of light is days away. */
        LIGHTSTRUCK_SOON(Topic.LIGHT, Bite.AHEAD),
        LIGHT_MAY_BE_TASTED(Topic.LIGHT, Bite.PAST),
        LIGHT_FALLS(Topic.LIGHT, Bite.NOW),
        BEYOND_ALCOHOL_LIMIT(Topic.YEAST, Bite.NOW),
        NO_SUGAR(Topic.YEAST, Bite.NOW),
        READINGS_STAND_STILL(Topic.YEAST, Bite.NOW),
        TOO_HOT_FOR_YEAST(Topic.YEAST, Bite.NOW),
        STALLED(Topic.YEAST, Bite.NOW),
        SLOW(Topic.YEAST, Bite.NOW),
        PAST_BEST_BEFORE(Topic.AGE, Bite.PAST);

        private final Topic topic;
        private final Bite bite;

        Kind(Topic topic, Bite bite) {
            this.topic = topic;
            this.bite = bite;
        }

        public Topic topic() {
            return topic;
        }

        public Bite bite() {
            return bite;
        }
    }
}
