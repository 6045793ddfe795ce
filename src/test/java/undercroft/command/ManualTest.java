package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The manual page that the package installs, held to what the program says of itself. */
final class ManualTest {
    private static final Path PAGE = Path.of("src/dist/linux/undercroft.1");

    @Test
    void theManualNamesEveryCommandAndNoOther() throws IOException {
        List<String> known =
                found("(?m)^  (\\w+) ", Terminal.run(Path.of("."), "--help").out());
        List<String> told = found("(?m)^\\\\fB(\\w+)\\\\fR ", Files.readString(PAGE));
        assertFalse(known.isEmpty());
        assertEquals(known.stream().sorted().toList(), told.stream().sorted().toList());
    }

    @Test
    void everyOptionOfTheManualIsTaken() throws IOException {
        for (String entry : Files.readString(PAGE).split("\\.TP\n", -1)) {
            List<String> command = found("^\\\\fB(\\w+)\\\\fR ", entry);
            if (!command.isEmpty()) {
                String help =
                        Terminal.run(Path.of("."), command.get(0), "--help").out();
                List<String> missing = found("\\\\-\\\\-([a-z]+(?:\\\\-[a-z]+)*)", entry).stream()
                        .map(option -> "--" + option.replace("\\", ""))
                        .filter(option -> !help.contains(option))
                        .toList();
                assertEquals(List.of(), missing, command.get(0));
            }
        }
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult match) -> match.group(1))
                .toList();
    }
}
