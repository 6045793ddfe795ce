package undercroft.session;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Tells what follows the clock that time went by, on the window's thread, until it is closed. */
public final class Ticker implements AutoCloseable {
    /** Bottles change slowly: what is shown is never older than this. */
    static final Duration STEP = Duration.ofMinutes(5);

    private final ReadOnlyObjectWrapper<Instant> now;
    private final Beat.Running running;
    private volatile boolean closed;

    Ticker(Clock clock, Beat beat, Executor window) {
        now = new ReadOnlyObjectWrapper<>(this, "now", clock.instant());
        running = beat.every(
                STEP,
                () -> window.execute(() -> {
                    if (!closed) {
                        now.set(clock.instant());
                    }
                }));
    }

    /** The instant of the last step. */
    public ReadOnlyObjectProperty<Instant> nowProperty() {
        return now.getReadOnlyProperty();
    }

    @Override
    public void close() {
        closed = true;
        running.close();
    }
}
