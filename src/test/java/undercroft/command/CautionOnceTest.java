package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.wording.Messages;

/** Whatever a command prints or writes with a pressure, a dose or a limit in it ends with the one caution, and says it once. */
class CautionOnceTest {
    private static final String CAUTION = Messages.english().of("caution.estimate");

    @TempDir
    Path scratch;

    private Path folder;

    @BeforeEach
    void copyTheDemo() throws IOException {
        folder = scratch.resolve("cellar");
        Path demo = Path.of("demo-data/weir-house");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(demo.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
    }

    private static int count(String text) {
        return text.split(Pattern.quote(CAUTION), -1).length - 1;
    }

    @Test
    void whatAskedForAPressureOrADoseEndsWithIt() {
        for (List<String> line : List.of(
                List.of("dose", "--beer", "19L", "--warmest", "20C", "--target", "2.4vol", "--sugar", "dextrose"),
                List.of("pressure", "--bottle", "longneck-330", "--volumes", "2.6vol", "--temp", "25C"),
                List.of("open", folder.toString()),
                List.of("draw", folder.toString(), "quarry-porter", "--count", "2"),
                List.of("read", folder.toString(), "quarry-porter", "--gauge", "2.1bar"),
                List.of("move", folder.toString(), "quarry-porter", "--to", "outhouse", "--count", "5"))) {
            Terminal said = Terminal.run(scratch, line.toArray(String[]::new));
            assertEquals(0, said.code(), line + said.err());
            assertEquals(1, count(said.out()), line + "\n" + said.out());
        }
    }

    @Test
    void whatIsWrittenForAPersonHasItOnce() throws IOException {
        Terminal said = Terminal.run(
                scratch,
                "report",
                folder.toString(),
                "--out",
                scratch.resolve("out").toString());
        assertEquals(0, said.code(), said.err());
        assertEquals(1, count(Files.readString(scratch.resolve("out").resolve("index.html"))));
        assertEquals(1, count(Files.readString(scratch.resolve("out").resolve("report.json"))));
    }
}
