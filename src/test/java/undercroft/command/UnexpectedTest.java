package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.wording.Messages;

/** What went wrong and should not have is one line and exit code 1, not a page of the program's insides. */
class UnexpectedTest {
    @TempDir
    Path scratch;

    private final List<Throwable> noted = new ArrayList<>();
    private final StringWriter err = new StringWriter();

    private int open(Console.WindowOpener opener) {
        return Commands.run(
                new Console(
                        new PrintWriter(new StringWriter()),
                        new PrintWriter(err),
                        Messages.english(),
                        Clock.fixed(Instant.EPOCH, ZoneOffset.UTC),
                        ZoneOffset.UTC,
                        scratch,
                        Optional::empty,
                        Optional::empty,
                        trouble -> {
                            noted.add(trouble);
                            return Optional.of(Path.of("state", "undercroft.log"));
                        },
                        opener),
                "open");
    }

    @Test
    void aFaultOfOursIsOneLineThatNamesTheLog() {
        int code = open(request -> {
            throw new IllegalStateException("inside");
        });
        assertEquals(1, code);
        assertEquals(1, err.toString().lines().count(), err::toString);
        assertTrue(err.toString().contains("undercroft.log"), err::toString);
        assertEquals(1, noted.size());
    }

    @Test
    void runningOutOfMemoryIsOneLineToo() {
        int code = open(request -> {
            throw new OutOfMemoryError("inside");
        });
        assertEquals(1, code);
        assertEquals(1, err.toString().lines().count(), err::toString);
        assertTrue(err.toString().contains("memory"), err::toString);
    }
}
