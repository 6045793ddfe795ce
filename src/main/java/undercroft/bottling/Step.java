package undercroft.bottling;

import java.time.Duration;
import java.util.Optional;

/**
 * One thing to do on the day.
 *
 * @param id stays the same whatever the figures, so that a tick keeps its meaning
 * @param words what to do, with its amounts
 * @param timer how long it takes by the clock, if it does
 * @param caution what could hurt someone, or empty
 * @param oxygen the habit that keeps air out of the beer, or empty
 */
public record Step(String id, String words, Optional<Duration> timer, String caution, String oxygen) {
    static Step of(String id, String words) {
        return new Step(id, words, Optional.empty(), "", "");
    }

    Step timed(int minutes) {
        return minutes > 0 ? new Step(id, words, Optional.of(Duration.ofMinutes(minutes)), caution, oxygen) : this;
    }

    Step caution(String sentence) {
        return new Step(id, words, timer, sentence, oxygen);
    }

    Step oxygen(String sentence) {
        return new Step(id, words, timer, caution, sentence);
    }
}
