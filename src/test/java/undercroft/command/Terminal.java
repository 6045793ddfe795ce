package undercroft.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** Runs a command line and keeps what it printed. */
record Terminal(int code, String out, String err) {
    static Terminal run(Path scratch, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Console console = new Console(
                new PrintWriter(out),
                new PrintWriter(err),
                Clock.fixed(Instant.parse("2026-11-21T17:00:00Z"), ZoneOffset.UTC),
                ZoneOffset.UTC,
                scratch,
                folder -> false);
        int code = Commands.run(console, arguments);
        return new Terminal(code, out.toString(), err.toString());
    }
}
