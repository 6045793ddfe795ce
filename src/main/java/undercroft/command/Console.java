package undercroft.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import undercroft.store.Broker;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/**
 * What a command may use of the machine, handed in by the one place that looks.
 *
 * @param messages the language of answers and faults
 * @param scratch the folder of the system in which a private one for a report nobody named a place for is made
 * @param lastCellar the cellar that was open last, where there is one
 * @param broker where live sensors are heard, where the user's settings name one
 * @param trouble notes what went wrong and should not have, and says in which file
 */
public record Console(
        PrintWriter out,
        PrintWriter err,
        Messages messages,
        Clock clock,
        ZoneId zone,
        Path scratch,
        Supplier<Optional<Path>> lastCellar,
        Supplier<Optional<Broker>> broker,
        Function<Throwable, Optional<Path>> trouble,
        WindowOpener window) {
    public Console {
        out = PlainText.on(out);
        err = PlainText.on(err);
    }

    /** The same in another language. */
    Console speaking(Language language) {
        return new Console(
                out, err, language.messages(Locale.ROOT), clock, zone, scratch, lastCellar, broker, trouble, window);
    }

    /** Opens a window on a cellar, the demo, or the page on which one begins. */
    public interface WindowOpener {
        /**
         * Opens the window and returns when it is closed.
         *
         * @return false when there is no display to open it on, or it could not be opened
         */
        boolean open(WindowRequest request);
    }
}
