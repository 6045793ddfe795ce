package undercroft.session;

import java.time.Duration;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Calls something again and again until it is closed. */
@FunctionalInterface
public interface Beat {
    /** What runs; closing it is the end of the calls. */
    @FunctionalInterface
    interface Running extends AutoCloseable {
        @Override
        void close();
    }

    Running every(Duration step, Runnable act);

    /** A thread of its own, which never keeps the program from ending. */
    static Beat onAThread() {
        return (step, act) -> {
            ScheduledThreadPoolExecutor timer =
                    new ScheduledThreadPoolExecutor(1, work -> WorkThreads.daemon(work, "clock"));
            ScheduledFuture<?> calls =
                    timer.scheduleAtFixedRate(act, step.toMillis(), step.toMillis(), TimeUnit.MILLISECONDS);
            return () -> {
                calls.cancel(false);
                timer.shutdownNow();
            };
        };
    }
}
