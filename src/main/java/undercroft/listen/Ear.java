package undercroft.listen;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import undercroft.calc.spell.CleanSeries;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.SensorTopic;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.series.TimeSeries;
import undercroft.store.json.MessageNumber;
import undercroft.store.json.MessageTime;

/**
 * What is heard of one sensor: of a place, or of a gauge on a bottle. Of each second one reading is kept, so that a flood takes no more room than a
 * minute has seconds; of each minute its median is handed on, and its extremes where they lie more than 1 K off. Spikes
 * are judged among the single readings, before that. What is left out is counted.
 */
final class Ear {
    /** Beyond this an extreme of a minute is a sample of its own, K. */
    static final double EXTREME_KELVIN = 1;

    private static final int MINUTE = 60;
    /** A message may be under way for so long. */
    private static final int GRACE_SECONDS = 5;

    private static final int REMEMBERED_SECONDS = 600;
    /** So far ahead a sensor's clock may be without being called wrong. */
    private static final Duration CLOCKS_DIFFER = Duration.ofMinutes(2);

    /** A message that was longer under way is from a clock that was never set. */
    private static final Duration LATEST_MESSAGE = Duration.ofDays(30);

    private static final Duration SILENCE = Duration.ofHours(1);

    private final String place;
    private final SensorTopic topic;
    private final NavigableMap<Long, Double> readings = new TreeMap<>();
    private final TreeSet<Long> minutes = new TreeSet<>();
    private final Instant since;
    private Optional<Instant> heard = Optional.empty();
    private String nonsense = "";
    private boolean looksFahrenheit;
    private boolean wrongClock;
    private Counts counts = new Counts(0, 0, 0, 0, 0);
    private long toldOut;
    private boolean refused;

    /**
     * Messages by what became of them.
     *
     * @param taken readings kept
     * @param numberless held no number
     * @param implausible outside the range given for the place
     * @param crowded came in a second that had one already
     * @param retained were kept by the broker from a time nobody knows
     */
    record Counts(long taken, long numberless, long implausible, long crowded, long retained) {
        long out() {
            return numberless + implausible + crowded + retained;
        }
    }

    /** {@code place} is what a person calls where the sensor is. */
    Ear(String place, SensorTopic topic, Instant since) {
        this.place = place;
        this.topic = topic;
        this.since = since;
    }

    SensorTopic topic() {
        return topic;
    }

    Counts counts() {
        return counts;
    }

    /** Whether the broker lets nobody of this name hear the topic. */
    void refused(boolean isRefused) {
        refused = isRefused;
    }

    /** Takes in one message, or counts why not. */
    void hear(byte[] message, boolean retained, Instant now) {
        Counts c = counts;
        Optional<Instant> measured = measured(message, now);
        if (retained && measured.isEmpty()) {
            counts = new Counts(c.taken, c.numberless, c.implausible, c.crowded, c.retained + 1);
            return;
        }
        OptionalDouble number = MessageNumber.of(message, topic.pointer());
        if (number.isEmpty()) {
            counts = new Counts(c.taken, c.numberless + 1, c.implausible, c.crowded, c.retained);
            nonsense = new String(message, 0, Math.min(message.length, 40), StandardCharsets.UTF_8);
            return;
        }
        double value = topic.kept(number.getAsDouble());
        if (!topic.isPlausible(value)) {
            counts = new Counts(c.taken, c.numberless, c.implausible + 1, c.crowded, c.retained);
            nonsense = String.valueOf(number.getAsDouble());
            looksFahrenheit =
                    topic instanceof FollowedTopic temperature && temperature.looksFahrenheit(number.getAsDouble());
            return;
        }
        Instant at = measured.orElse(now);
        Instant came = retained ? at : now;
        heard = heard.filter(before -> before.isAfter(came)).or(() -> Optional.of(came));
        long second = at.getEpochSecond();
        boolean crowded = readings.putIfAbsent(second, value) != null;
        minutes.add(Math.floorDiv(second, MINUTE));
        counts = new Counts(
                c.taken + (crowded ? 0 : 1), c.numberless, c.implausible, c.crowded + (crowded ? 1 : 0), c.retained);
    }

    /** When the sensor says it measured; empty where it does not say, or cannot be right. */
    private Optional<Instant> measured(byte[] message, Instant now) {
        if (topic.timePointer().isEmpty()) {
            return Optional.empty();
        }
        Optional<Instant> told = MessageTime.of(message, topic.timePointer());
        Optional<Instant> sure =
                told.filter(at -> !at.isAfter(now.plus(CLOCKS_DIFFER)) && at.isAfter(now.minus(LATEST_MESSAGE)));
        wrongClock = told.isPresent() && sure.isEmpty();
        return sure.map(at -> at.isAfter(now) ? now : at);
    }

    /** Whether a minute is complete and not handed on yet. */
    boolean isDue(Instant now) {
        return !minutes.isEmpty() && isComplete(minutes.first(), now);
    }

    private static boolean isComplete(long minute, Instant now) {
        return now.getEpochSecond() >= (minute + 1) * MINUTE + GRACE_SECONDS;
    }

    /** The samples of all minutes that are complete; with {@code all} of the present one too, as far as it goes. */
    TimeSeries samples(Instant now, boolean all) {
        NavigableMap<Long, Double> samples = new TreeMap<>();
        CleanSeries clean = clean();
        for (long minute : minutes) {
            if (all || isComplete(minute, now)) {
                thin(clean.series().between(minute * MINUTE, (minute + 1) * MINUTE), isComplete(minute, now), samples);
            }
        }
        return series(samples);
    }

    private CleanSeries clean() {
        return CleanSeries.of(series(readings));
    }

    private static TimeSeries series(NavigableMap<Long, Double> samples) {
        TimeSeries.Builder series = new TimeSeries.Builder();
        samples.forEach(series::add);
        return series.build();
    }

    private static void thin(TimeSeries minute, boolean complete, Map<Long, Double> samples) {
        if (minute.size() < 2) {
            for (int i = 0; i < minute.size(); i++) {
                samples.put(minute.timeAt(i), minute.valueAt(i));
            }
            return;
        }
        double median = median(minute);
        if (complete) {
            for (int extreme :
                    new int[] {minute.lowestBetween(0, minute.size() - 1), minute.highestBetween(0, minute.size() - 1)
                    }) {
                if (Math.abs(minute.valueAt(extreme) - median) > EXTREME_KELVIN) {
                    samples.put(minute.timeAt(extreme), minute.valueAt(extreme));
                }
            }
        }
        samples.put(Math.floorDiv(minute.firstTime(), MINUTE) * MINUTE + MINUTE / 2, median);
    }

    private static double median(TimeSeries minute) {
        double[] values = new double[minute.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = minute.valueAt(i);
        }
        Arrays.sort(values);
        int middle = values.length / 2;
        return values.length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }

    /** What was complete then is on a disk. */
    void kept(Instant then) {
        minutes.removeIf(minute -> isComplete(minute, then));
        readings.headMap(then.getEpochSecond() - REMEMBERED_SECONDS).clear();
    }

    /** What was left out, where that is more than at the last call. */
    Optional<Phrase> leftOut() {
        if (counts.out() == toldOut) {
            return Optional.empty();
        }
        toldOut = counts.out();
        return Optional.of(Phrase.of(
                "listen.left-out",
                place,
                counts.taken(),
                counts.numberless(),
                counts.implausible(),
                counts.crowded(),
                counts.retained()));
    }

    SensorState state(Instant now) {
        return new SensorState(heard, counts.taken(), counts.out(), faults(now));
    }

    private String implausible() {
        if (topic instanceof PressureTopic) {
            return "listen.fault.no-pressure";
        }
        return looksFahrenheit ? "listen.fault.fahrenheit" : "listen.fault.implausible";
    }

    /** What a person should know. */
    List<InvalidInput> faults(Instant now) {
        List<InvalidInput> faults = new ArrayList<>();
        if (refused) {
            faults.add(new InvalidInput(place, "listen.fault.refused", topic.name()));
        }
        if (heard.orElse(since).plus(SILENCE).isBefore(now)) {
            faults.add(new InvalidInput(place, "listen.fault.silent", topic.name()));
        }
        if (counts.numberless > 0) {
            faults.add(new InvalidInput(place, "listen.fault.numberless", topic.name(), nonsense));
        }
        if (counts.implausible > 0) {
            faults.add(new InvalidInput(place, implausible(), topic.name(), nonsense));
        }
        if (wrongClock) {
            faults.add(new InvalidInput(place, "listen.fault.clock", topic.name()));
        }
        if (counts.crowded > 0) {
            faults.add(new InvalidInput(place, "listen.fault.crowded", topic.name()));
        }
        return faults;
    }
}
