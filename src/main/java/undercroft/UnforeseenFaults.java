package undercroft;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import undercroft.app.Faults;
import undercroft.quantity.InvalidInput;

/** The border of the window: whatever nobody caught ends here, in the log and in one sentence. Of any thread. */
final class UnforeseenFaults {
    private final TroubleLog log;
    private final Executor disk;
    private final Executor window;
    private final AtomicBoolean telling = new AtomicBoolean();

    UnforeseenFaults(TroubleLog log, Executor disk, Executor window) {
        this.log = log;
        this.disk = disk;
        this.window = window;
    }

    /** Notes the fault and says so on the window's thread; what comes before that is said has the same sentence. */
    void tell(Throwable trouble, Consumer<InvalidInput> say) {
        if (!telling.compareAndSet(false, true)) {
            return;
        }
        disk.execute(() -> {
            Optional<Path> file = log.note(trouble);
            window.execute(() -> {
                telling.set(false);
                say.accept(told(trouble, file));
            });
        });
    }

    private static InvalidInput told(Throwable trouble, Optional<Path> file) {
        if (trouble instanceof OutOfMemoryError) {
            return new InvalidInput("", "fault.memory");
        }
        return file.map(where -> new InvalidInput("", "fault.unexpected.logged", where.toString()))
                .orElseGet(() -> new InvalidInput(
                        "", "fault.unexpected.plain", trouble.getClass().getSimpleName()));
    }

    /** Shows a fault; one that nobody foresaw has its cause with it, which goes to the log. */
    void show(Faults faults, InvalidInput fault) {
        if (fault.getCause() != null) {
            disk.execute(() -> log.note(fault.getCause()));
        }
        faults.show(fault);
    }
}
