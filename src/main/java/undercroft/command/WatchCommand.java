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

    private final Console console;

    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--publish")
    private Path publish;

    @Option(names = "--once")
    private boolean once;

    WatchCommand(Console console) {
        this.console = console;
    }

    /** Goes on until the program is ended. */
    @Override
    public Integer call() {
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
    private static boolean waited(Watch watch) {
        try {
            for (long second = 0; second < Watch.STEP.toSeconds(); second++) {
                Thread.sleep(LOOK_EVERY_MILLISECONDS);
                if (watch.isDue()) {
                    watch.save();
                }
            }
            return true;
        } catch (InterruptedException ended) {
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
