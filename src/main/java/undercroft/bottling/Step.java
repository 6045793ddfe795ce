package undercroft.bottling;

import java.time.Duration;
import java.util.Optional;
import undercroft.quantity.Phrase;

/**
 * One thing to do on the day.
 *
 * @param id stays the same whatever the figures, so that a tick keeps its meaning
 * @param words what to do, with its amounts
 * @param timer how long it takes by the clock, if it does
 * @param caution what could hurt someone
 * @param oxygen the habit that keeps air out of the beer
 */
public record Step(
        String id, Phrase words, Optional<Duration> timer, Optional<Phrase> caution, Optional<Phrase> oxygen) {
    /** The step with this id; its sentence has the id in its key. */
    static Step of(String id, Object... amounts) {
        return new Step(
                id, Phrase.of("bottling.step." + id, amounts), Optional.empty(), Optional.empty(), Optional.empty());
    }

    Step timed(int minutes) {
        return minutes > 0 ? new Step(id, words, Optional.of(Duration.ofMinutes(minutes)), caution, oxygen) : this;
    }

    Step caution(Phrase sentence) {
        return new Step(id, words, timer, Optional.of(sentence), oxygen);
    }

    Step oxygen(Phrase sentence) {
        return new Step(id, words, timer, caution, Optional.of(sentence));
    }
}
