package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How large a file and a package may grow before it is two things. */
final class SizesTest {
    private static final int MOST_LINES = 400;
    private static final int MOST_FILES = 25;

    /** Packages that may hold more, and why. */
    private static final Map<String, String> LARGER = Map.of(
            "undercroft.outlook.lot",
            "one record for each fact of a lot, and what works it out; a screen reads them together",
            "undercroft.calc.gas",
            "the closed bottle and each law it is made of, a file to a law with its source",
            "undercroft.cellar",
            "one small record for each thing a user can tell, all of them parts of Cellar",
            "undercroft.calc.conditioning",
            "one model, its numbers, its ensemble and what weighs it, each in a file",
            "undercroft.command",
            "one class a command, as the line lists them");

    @Test
    void noFileIsLongerThanCanBeReadAtASitting() throws IOException {
        Map<String, Integer> longer = new TreeMap<>();
        for (Path file : sources("src/main/java", "src/test/java", "src/jmh/java")) {
            int lines = Files.readAllLines(file).size();
            if (lines > MOST_LINES) {
                longer.put(file.toString(), lines);
            }
        }
        assertEquals(Map.of(), longer, "files of more than " + MOST_LINES + " lines do two things; part them");
    }

    @Test
    void noPackageHoldsMoreFilesThanCanBeSeenAtOnce() throws IOException {
        Map<String, Long> larger = sources("src/main/java").stream()
                .collect(Collectors.groupingBy(SizesTest::packageOf, TreeMap::new, Collectors.counting()));
        larger.values().removeIf(files -> files <= MOST_FILES);
        larger.keySet().removeAll(LARGER.keySet());
        assertEquals(
                Map.of(), larger, "packages of more than " + MOST_FILES + " files; part them, or state a reason here");
    }

    private static String packageOf(Path file) {
        Path folder = Path.of("src/main/java").relativize(file).getParent();
        return folder.toString().replace('/', '.').replace('\\', '.');
    }

    private static List<Path> sources(String... roots) throws IOException {
        List<Path> found = new ArrayList<>();
        for (String root : roots) {
            try (Stream<Path> below = Files.walk(Path.of(root))) {
                below.filter(file -> file.toString().endsWith(".java") && !file.endsWith("package-info.java"))
                        .forEach(found::add);
            }
        }
        return found;
    }
}
