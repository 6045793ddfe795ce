package undercroft.picture;

import java.time.Instant;
import java.time.LocalDate;
import undercroft.wording.ShelfWords;

/** What stands on the now-line: now, or the date where another day than today is looked at. */
final class NowTag {
    private NowTag() {}

    /** {@code clock} is the present moment, whatever instant the shelf is seen at. */
    static String of(ShelfWords words, Instant clock) {
        LocalDate seen = words.format().date(words.at());
        return seen.equals(words.format().date(clock)) ? words.of("date.now") : words.day(seen);
    }
}
