package undercroft.picture;

import java.time.Duration;
import java.time.Instant;
import undercroft.cellar.Draw;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;

/** How far into the future the picture of a lot looks. */
public final class PictureSpan {
    private static final Duration LEAST_AHEAD = Duration.ofDays(21);
    private static final Duration MOST_AHEAD = Duration.ofDays(120);
    private static final Duration AFTER_READY = Duration.ofDays(7);

    private PictureSpan() {}

    /** The last instant worth showing at first; the forecast itself may run on further. */
    public static Instant until(CellarOutlook outlook, BatchOutlook batch, LotOutlook lot) {
        Instant capped = batch.batch().cappedAt().orElseThrow();
        Instant at = outlook.at();
        if (batch.stage() == Stage.EMPTY) {
            Instant last = lot.lot().draws().stream()
                    .map(Draw::at)
                    .filter(drawn -> !drawn.isAfter(at))
                    .max(Instant::compareTo)
                    .orElse(at);
            return last.plus(Duration.between(capped, last).dividedBy(10)).plus(Duration.ofDays(1));
        }
        Duration past = Duration.between(capped, at).dividedBy(3);
        Duration toReady = lot.ready()
                .late()
                .or(lot.ready()::median)
                .map(day -> Duration.between(at, day).plus(AFTER_READY))
                .orElse(Duration.ZERO);
        Duration ahead = max(LEAST_AHEAD, max(past, toReady));
        return at.plus(ahead.compareTo(MOST_AHEAD) > 0 ? MOST_AHEAD : ahead);
    }

    private static Duration max(Duration one, Duration other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}
