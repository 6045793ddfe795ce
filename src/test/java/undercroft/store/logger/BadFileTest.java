package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.quantity.InvalidInput;
import undercroft.wording.English;

class BadFileTest {
    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static Stream<Arguments> files() {
        return Stream.of(
                Arguments.of(bytes(""), "empty"),
                Arguments.of(bytes("\n\n  \n"), "blank"),
                Arguments.of(bytes("\u0089PNG\r\n\u001a\n...."), "picture"),
                Arguments.of(bytes("PK\u0003\u0004......."), "spreadsheet"),
                Arguments.of(bytes("%PDF-1.7 ......"), "PDF"),
                Arguments.of(new byte[5000], "no text"),
                Arguments.of(bytes("time,temperature\n"), "line 1"),
                Arguments.of(bytes("dear diary\nit was warm\ntoday\n"), "first 3 lines"),
                Arguments.of(bytes("12.5\n12.6\n12.7\n"), "first 3 lines"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("files")
    void eachIsRefusedWithTheFilesNameAndOneSentence(byte[] content, String word) throws Exception {
        Path file = Files.write(folder.resolve("shelf.csv"), content);
        InvalidInput fault = assertThrows(InvalidInput.class, () -> LoggerFile.inspect(file, ZoneOffset.UTC));
        assertEquals("shelf.csv", fault.where());
        assertTrue(English.of(fault).contains(word), English.of(fault));
    }

    @Test
    void aFolderAndAMissingFileAreNamed() {
        InvalidInput aFolder = assertThrows(InvalidInput.class, () -> LoggerFile.inspect(folder, ZoneOffset.UTC));
        assertTrue(English.of(aFolder).contains("folder"));
        InvalidInput missing =
                assertThrows(InvalidInput.class, () -> LoggerFile.inspect(folder.resolve("gone.csv"), ZoneOffset.UTC));
        assertEquals("gone.csv", missing.where());
    }

    @Test
    void aFileWithOnlyFaultyReadingsSaysWhatIsWrongAndWhere() {
        InvalidInput fault = assertThrows(
                InvalidInput.class, () -> Logs.read("t,c\n2024-01-01 00:00,-127\n2024-01-01 00:10,-127\n"));
        assertTrue(English.of(fault).contains("line 2"), English.of(fault));
    }

    @Test
    void theWrongColumnsGiveNothingAndSaySo() {
        byte[] log = bytes("2024-01-01 00:00,12\n2024-01-01 00:10,12\n");
        Choices wrong =
                Choices.from(LoggerFile.inspect("a", log, ZoneOffset.UTC)).withValueColumn(7);
        assertThrows(InvalidInput.class, () -> LoggerFile.read("a", log, wrong, Progress.NONE));
    }

    @Test
    void zerosLeftByAPowerFailureSpoilOnlyTheirLine() {
        ImportedLog log = Logs.read("2024-01-01 00:00,12\n2024-01-01 00:10,12.5\n\0\0\0\0\n2024-01-01 00:30,13\n");
        assertEquals(3, log.kept());
        assertEquals(1, log.found(Reason.UNREADABLE).count());
    }

    @Test
    void decimalCommasBetweenCommasAreRefusedAndNotCutOff() {
        InvalidInput fault = assertThrows(
                InvalidInput.class, () -> Logs.inspect("time,temp\n2024-01-01 00:00,12,5\n2024-01-01 00:10,12,75\n"));
        assertTrue(English.of(fault).contains("semicolons"), English.of(fault));
    }

    @Test
    void aLineOfNothingButSeparatorsIsNoTrouble() {
        String commas = ",".repeat(300_000);
        ImportedLog log = Logs.read("2024-01-01 00:00,12\n2024-01-01 00:10,12.5\n" + commas + "\n");
        assertEquals(2, log.kept());
    }
}
