package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What a person reads stands in the bundles of {@code wording}, in every language, and nowhere else: a text of three words or more
 * in code is a sentence that one language alone would get.
 */
final class SentencesTest {
    private static final Path SOURCES = Path.of("src/main/java/undercroft");
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern THREE_WORDS =
            Pattern.compile("\\p{L}{2,}[,;:]? \\p{L}{2,}[;:]? \\p{L}{2,}", Pattern.UNICODE_CHARACTER_CLASS);

    /** For programmers: no person meets these, but as the cause in a log. */
    private static final Pattern EXCEPTION =
            Pattern.compile("new (?:\\w*Exception|AssertionError)\\((?:[^;]*)$|requireNonNull\\([^;]*$");

    /** Files that may hold some, and why. */
    private static final Map<String, String> ALLOWED = Map.of(
            "catalogue/Sugars.java", "sources of figures, as they are cited",
            "catalogue/Sanitiser.java", "sources of figures, as they are cited",
            "catalogue/Cleaner.java", "sources of figures, as they are cited",
            "catalogue/BottleClass.java", "sources of figures, as they are cited",
            "calc/ageing/ShelfLife.java", "the source of a figure, as it is cited",
            "calc/light/LightUncertainty.java", "the source of a figure, as it is cited",
            "calc/priming/SugarLabel.java", "the source of a figure, kept in the user's file",
            "app/help/Library.java", "names of libraries and licences",
            "view/kit/Looks.java", "the name of a font");

    @Test
    void sentencesStandInTheBundlesAlone() throws IOException {
        Map<String, List<String>> found = new TreeMap<>();
        for (Path file : sources()) {
            String name = SOURCES.relativize(file).toString().replace('\\', '/');
            List<String> sentences = sentences(Files.readString(file));
            if (!sentences.isEmpty() && !ALLOWED.containsKey(name)) {
                found.put(name, sentences);
            }
        }
        assertEquals(Map.of(), found, "put them into a bundle");
    }

    @Test
    void everyExemptionIsNeeded() throws IOException {
        List<String> needless = new ArrayList<>();
        for (String name : ALLOWED.keySet()) {
            if (sentences(Files.readString(SOURCES.resolve(name))).isEmpty()) {
                needless.add(name);
            }
        }
        assertEquals(List.of(), needless);
    }

    @Test
    void aSentenceIsSeenAndAnExceptionIsNot() {
        assertEquals(
                List.of("the beer is ready"),
                sentences(
                        "/** \"no text at all\" */ label.setText(\"the beer is ready\"); throw new IllegalStateException(\"this may not be\");"));
    }

    private static List<String> sentences(String source) {
        String code = COMMENT.matcher(source).replaceAll("");
        List<String> found = new ArrayList<>();
        Matcher text = TEXT.matcher(code);
        while (text.find()) {
            String before = code.substring(Math.max(0, text.start() - 160), text.start());
            if (THREE_WORDS.matcher(text.group(1)).find()
                    && !EXCEPTION.matcher(before).find()) {
                found.add(text.group(1));
            }
        }
        return found;
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
