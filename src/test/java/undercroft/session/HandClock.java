package undercroft.session;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on when the test says so. */
public final class HandClock extends Clock {
    private static final Duration STEP = Duration.ofMinutes(5);

    private volatile Instant now;

    public HandClock(Instant now) {
        this.now = now;
    }

    /** By five minutes. */
    public void goOn() {
        goOn(STEP);
    }

    public void goOn(Duration step) {
        now = now.plus(step);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
