package undercroft.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.session.watch.Watch;

@Command
final class WatchCommand implements Callable<Integer> {
    private static final long LOOK_EVERY_MILLISECONDS = 1_000;

    private static final long LONGEST_END_MILLISECONDS = 20_000;

    private final Console console;
    private volatile boolean ended;

    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--publish")
    private Path publish;

    @Option(names = "--once")
    private boolean once;

    WatchCommand(Console console) {
        this.console = console;
    }

    /** Goes on until the program is ended, which waits for what is to be saved. */
    @Override
    public Integer call() {
        Thread watching = Thread.currentThread();
        Thread end = new Thread(
                () -> {
                    ended = true;
                    try {
                        watching.join(LONGEST_END_MILLISECONDS);
                    } catch (InterruptedException hurried) {
                        Thread.currentThread().interrupt();
                    }
                },
                "undercroft-end");
        Runtime.getRuntime().addShutdownHook(end);
        try {
            return watch();
        } finally {
            forget(end);
        }
    }

    private static void forget(Thread end) {
        try {
            Runtime.getRuntime().removeShutdownHook(end);
        } catch (IllegalStateException isEnding) {
            // It is what called this end.
        }
    }

    private int watch() {
        Consumer<String> says = line(console.out());
        try (Watch watch = new Watch(
                folder,
                Optional.ofNullable(publish),
                console.broker().get(),
                console.clock(),
                console.messages(),
                says,
                line(console.err()))) {
            says.accept(console.messages().of("watch.begun", folder));
            says.accept(console.messages().of("caution.estimate"));
            do {
                watch.round();
            } while (!once && waited(watch));
        }
        return 0;
    }

    /** Until the next round; what sensors bring meanwhile is saved when it should be. */
    private boolean waited(Watch watch) {
        try {
            for (long second = 0; second < Watch.STEP.toSeconds(); second++) {
                if (ended) {
                    return false;
                }
                Thread.sleep(LOOK_EVERY_MILLISECONDS);
                if (watch.isDue()) {
                    watch.save();
                }
            }
            return !ended;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static Consumer<String> line(PrintWriter writer) {
        return sentence -> {
            writer.println(sentence.replaceAll("\\R", " "));
            writer.flush();
        };
    }
}
