package undercroft.session;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * The threads of one open cellar: a slow calculation for a cellar that was left holds up no other.
 *
 * @param window where answers arrive
 * @param calculating forecasts and files, one after the other
 * @param saving changes, in the order they were made
 */
public record WorkThreads(Executor window, ExecutorService calculating, ExecutorService saving, Beat beat) {
    private static final int LONGEST_SAVE_SECONDS = 30;

    /** Threads that never keep the program from ending. */
    public static WorkThreads answeringOn(Executor window) {
        return new WorkThreads(window, single("forecasts"), single("saving"), Beat.onAThread());
    }

    private static ExecutorService single(String name) {
        return Executors.newSingleThreadExecutor(work -> daemon(work, name));
    }

    static Thread daemon(Runnable work, String name) {
        Thread thread = new Thread(work, "undercroft-" + name);
        thread.setDaemon(true);
        return thread;
    }

    BackgroundTasks forCalculating() {
        return new BackgroundTasks(calculating, window);
    }

    BackgroundTasks forSaving() {
        return new BackgroundTasks(saving, window);
    }

    /** Takes on no more work; what is to be saved is still saved. */
    void end() {
        calculating.shutdownNow();
        saving.shutdown();
    }

    /**
     * Waits for what is still to be saved.
     *
     * @throws TimeoutException when the disk takes longer than anybody would wait
     */
    void awaitSaved() throws InterruptedException, TimeoutException {
        if (!saving.awaitTermination(LONGEST_SAVE_SECONDS, TimeUnit.SECONDS)) {
            throw new TimeoutException(LONGEST_SAVE_SECONDS + " s");
        }
    }
}
