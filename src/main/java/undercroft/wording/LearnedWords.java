package undercroft.wording;

import java.time.Instant;
import java.util.Optional;
import undercroft.outlook.lot.Learned;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Interval;

/** What earlier batches taught of one, in words: the same on its page, in the why of its date and in a report. */
public record LearnedWords(ShelfWords words) {
    /** Nearer to 1 than so is as fast as usual. */
    private static final double ALIKE = 1.1;

    /** One sentence with what it rests on. */
    public String sentence(Learned learned) {
        String from = words.of("learned.from", learned.batches(), learned.readings());
        if (learned.isUnlike()) {
            return words.of("learned.unlike", from);
        }
        Interval faster = learned.timesAsFast();
        if (faster.median() >= ALIKE) {
            return words.of("learned.faster", number(faster), range(faster), from);
        }
        if (faster.median() <= 1 / ALIKE) {
            Interval slower = Interval.of(1 / faster.high(), 1 / faster.median(), 1 / faster.low());
            return words.of("learned.slower", number(slower), range(slower), from);
        }
        return words.of("learned.as-usual", range(faster), from);
    }

    /** The dates that the lot would have without the others; empty where they taught nothing. */
    Optional<String> alone(LotOutlook lot) {
        return lot.ready()
                .alone()
                .map(seconds ->
                        words.of("learned.alone", day(seconds.low()), day(seconds.median()), day(seconds.high())));
    }

    private String day(double epochSecond) {
        return Double.isInfinite(epochSecond)
                ? words.of("figure.ready.never")
                : words.day(Instant.ofEpochSecond(Math.round(epochSecond)));
    }

    private String number(Interval times) {
        return words.format().number(times.median(), 1);
    }

    private String range(Interval times) {
        return words.format().range(times, 1);
    }
}
