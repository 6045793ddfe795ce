package undercroft.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import undercroft.wording.Messages;

/** Runs a command line and keeps what it printed. */
record Terminal(int code, String out, String err) {
    static Terminal run(Path scratch, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Console console = console(scratch, new PrintWriter(out), new PrintWriter(err));
        int code = Commands.run(console, arguments);
        return new Terminal(code, out.toString(), err.toString());
    }

    /** A console whose words nobody reads. */
    static Console console(Path scratch) {
        return console(scratch, new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()));
    }

    private static Console console(Path scratch, PrintWriter out, PrintWriter err) {
        return new Console(
                out,
                err,
                Messages.english(),
                Clock.fixed(Instant.parse("2026-11-21T17:00:00Z"), ZoneOffset.UTC),
                ZoneOffset.UTC,
                scratch,
                Optional::empty,
                Optional::empty,
                trouble -> Optional.of(scratch.resolve("undercroft.log")),
                request -> false);
    }
}
