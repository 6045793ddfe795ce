package undercroft.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import undercroft.wording.Messages;

/**
 * What a command may use of the machine, handed in by the one place that looks.
 *
 * @param messages the language of answers and faults
 * @param scratch the folder of the system in which a private one for a report nobody named a place for is made
 */
public record Console(
        PrintWriter out,
        PrintWriter err,
        Messages messages,
        Clock clock,
        ZoneId zone,
        Path scratch,
        WindowOpener window) {
    /** Opens a window on a cellar folder, or on the demo. */
    public interface WindowOpener {
        /**
         * Opens the window and returns when it is closed.
         *
         * @param folder the cellar; null for the demo
         * @return false when there is no display to open it on, or it could not be opened
         */
        boolean open(Path folder);
    }
}
