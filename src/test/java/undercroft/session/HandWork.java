package undercroft.session;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.TimeUnit;

/** Threads and a clock that a test turns by hand: all work is done at once, and time goes by when the test says so. */
public final class HandWork {
    private final List<Runnable> beats = new ArrayList<>();

    public WorkThreads threads() {
        return new WorkThreads(Runnable::run, new AtOnce(), new AtOnce(), this::every);
    }

    private Beat.Running every(Duration step, Runnable act) {
        beats.add(act);
        return () -> beats.remove(act);
    }

    /** How many clocks run. */
    public int running() {
        return beats.size();
    }

    public void beat() {
        List.copyOf(beats).forEach(Runnable::run);
    }

    private static final class AtOnce extends AbstractExecutorService {
        private boolean ended;

        @Override
        public void execute(Runnable work) {
            work.run();
        }

        @Override
        public void shutdown() {
            ended = true;
        }

        @Override
        public List<Runnable> shutdownNow() {
            ended = true;
            return List.of();
        }

        @Override
        public boolean isShutdown() {
            return ended;
        }

        @Override
        public boolean isTerminated() {
            return ended;
        }

        @Override
        public boolean awaitTermination(long timeout, TimeUnit unit) {
            return ended;
        }
    }
}
