package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.store.DemoCellar;

/** What a stranger's file or a slip on the command line must not do. */
final class ConsoleSafetyTest {
    @TempDir
    private Path scratch;

    private Path cellar;

    @BeforeEach
    void copyOfTheDemo() {
        cellar = scratch.resolve("cellar");
        DemoCellar.of("weir-house").copyTo(cellar);
    }

    private Terminal report() {
        return Terminal.run(
                scratch,
                "report",
                cellar.toString(),
                "--out",
                scratch.resolve("report").toString(),
                "--at",
                "2026-11-21");
    }

    @Test
    void aNameCannotSteerTheConsole() throws IOException {
        Path file = cellar.resolve("cellar.json");
        Files.writeString(
                file, Files.readString(file).replace("\"Weir House\"", "\"Weir \\u001b[31m\\u0007\\u202eHouse\""));
        Terminal done = report();
        assertEquals(0, done.code(), done.err());
        assertTrue(done.out().contains("House"), done.out());
        assertTrue(done.out().chars().allMatch(c -> c == '\n' || c == '\r' || (c >= 0x20 && c != 0x7F && c != 0x202E)));
    }

    @Test
    void aLineThatCannotBeTrueIsToldAndTheRestIsUsed() throws IOException {
        Files.writeString(
                cellar.resolve("temperatures/loft.csv"), "2026-11-21T16:59:00Z,999\n", StandardOpenOption.APPEND);
        Terminal done = report();
        assertEquals(0, done.code(), done.err());
        assertTrue(done.out().contains("temperatures/loft.csv") && done.out().contains("left out"), done.out());
        String page = Files.readString(scratch.resolve("report/index.html"));
        assertTrue(page.contains("temperatures/loft.csv"), "the page tells it too");
    }

    @ParameterizedTest
    @ValueSource(strings = {"9999-12-31", "2032-01-01", "1989-12-31", "-999999999-01-01T00:00:00Z"})
    void aTimeFarFromTodayIsRefused(String at) {
        Terminal done = Terminal.run(
                scratch,
                "report",
                cellar.toString(),
                "--out",
                scratch.resolve("r").toString(),
                "--at",
                at);
        assertEquals(2, done.code());
        assertTrue(done.err().contains("--at"), done.err());
        assertFalse(Files.exists(scratch.resolve("r")));
    }

    @Test
    void aFileNamedWithAnAtSignIsNoListOfArguments() throws IOException {
        Path list = Files.writeString(scratch.resolve("list"), "--version");
        Terminal done = Terminal.run(scratch, "check", "@" + list);
        assertEquals(2, done.code(), "the name of a folder that is not there, not a wish for the version");
        assertTrue(done.out().contains("does not exist"), done.out());
    }

    @Test
    void anAnswerThatCannotBeWrittenIsNoSuccess() {
        StringWriter err = new StringWriter();
        Writer full = new Writer() {
            @Override
            public void write(char[] text, int from, int count) throws IOException {
                throw new IOException("No space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        Console blank = Terminal.console(scratch);
        Console console = new Console(
                new PrintWriter(full),
                new PrintWriter(err),
                blank.messages(),
                blank.clock(),
                blank.zone(),
                blank.scratch(),
                blank.lastCellar(),
                blank.broker(),
                blank.trouble(),
                blank.window());
        String[] dose = {"dose", "--beer", "19L", "--warmest", "20C", "--target", "2.4vol", "--sugar", "dextrose"};
        assertEquals(1, Commands.run(console, dose));
        assertTrue(err.toString().contains("could not be written"), err.toString());
    }

    @Test
    void aCellarWhoseFileIsGoneSaysThatItCanBeBroughtBack() throws IOException {
        Files.createDirectories(cellar.resolve("history"));
        Files.move(cellar.resolve("cellar.json"), cellar.resolve("history/cellar-20261101T000000Z.json"));
        Terminal done = report();
        assertEquals(2, done.code());
        assertTrue(done.err().contains("history"), done.err());
    }

    @Test
    void aPlaceCannotBeNamedAsADevice() throws IOException {
        Path file = cellar.resolve("cellar.json");
        Files.writeString(file, Files.readString(file).replace("\"loft\"", "\"nul\""));
        Files.move(cellar.resolve("temperatures/loft.csv"), cellar.resolve("temperatures/nul.csv"));
        Terminal done = report();
        assertEquals(2, done.code());
        assertTrue(done.err().contains("nul-2"), done.err());
    }
}
