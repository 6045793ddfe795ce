package undercroft.session;

import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import undercroft.quantity.InvalidInput;

/** The one hop off the window's thread and back onto it. */
public final class BackgroundTasks {
    private final Executor background;
    private final Executor window;

    /** Work runs on {@code background}; answers arrive on {@code window}. */
    public BackgroundTasks(Executor background, Executor window) {
        this.background = background;
        this.window = window;
    }

    /** Runs {@code work} in the background, then one of the two answers on the window's thread. */
    public <T> void run(Callable<T> work, Consumer<? super T> whenDone, Consumer<? super InvalidInput> whenFaulty) {
        background.execute(() -> {
            try {
                T result = work.call();
                window.execute(() -> whenDone.accept(result));
            } catch (InvalidInput fault) {
                window.execute(() -> whenFaulty.accept(fault));
            } catch (Exception | VirtualMachineError | LinkageError fault) {
                InvalidInput told = told(fault);
                window.execute(() -> whenFaulty.accept(told));
            }
        });
    }

    /** A border: whatever went wrong in the background, out of memory too, is told and ends nothing else. */
    private static InvalidInput told(Throwable fault) {
        InvalidInput told = fault instanceof OutOfMemoryError
                ? new InvalidInput("", "fault.memory")
                : new InvalidInput("", "fault.not-done", fault);
        told.initCause(fault);
        return told;
    }

    /** A line of work in which only the newest request counts: older answers that arrive late are dropped. */
    public Line line() {
        return new Line();
    }

    /** See {@link #line()}. */
    public final class Line {
        private final AtomicLong newest = new AtomicLong();

        /** Whatever was asked for is wanted no more. */
        public void drop() {
            newest.incrementAndGet();
        }

        /** As {@link BackgroundTasks#run}, unless a newer request has been made by then. */
        public <T> void run(Callable<T> work, Consumer<? super T> whenDone, Consumer<? super InvalidInput> whenFaulty) {
            run(parts -> work.call(), part -> {}, whenDone, whenFaulty);
        }

        /** The same for work that tells parts of its result while it goes on; where a newer request is made, it ends there. */
        public <T, P> void run(
                PartByPart<T, P> work,
                Consumer<? super P> whenPart,
                Consumer<? super T> whenDone,
                Consumer<? super InvalidInput> whenFaulty) {
            long mine = newest.incrementAndGet();
            BackgroundTasks.this.run(
                    () -> newest.get() == mine ? work.call(part -> tell(mine, part, whenPart)) : null,
                    result -> {
                        if (newest.get() == mine && result != null) {
                            whenDone.accept(result);
                        }
                    },
                    fault -> {
                        if (newest.get() == mine) {
                            whenFaulty.accept(fault);
                        }
                    });
        }

        private <P> void tell(long mine, P part, Consumer<? super P> whenPart) {
            if (newest.get() != mine) {
                throw new CancellationException();
            }
            window.execute(() -> {
                if (newest.get() == mine) {
                    whenPart.accept(part);
                }
            });
        }
    }

    /** Work that tells parts of its result before it is done. */
    @FunctionalInterface
    public interface PartByPart<T, P> {
        T call(Consumer<P> parts) throws Exception;
    }
}
