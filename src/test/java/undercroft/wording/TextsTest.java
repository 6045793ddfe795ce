package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextsTest {
    private static final Pattern KEY = Pattern.compile("\"([a-z]+(?:\\.[a-z-]+){1,3})\"");
    private final ResourceBundle words = ResourceBundle.getBundle("undercroft.wording.texts", Locale.ROOT);

    private static String sources() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String room : new String[] {"app", "view", "session", "picture"}) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/undercroft", room))) {
                for (Path file :
                        files.filter(each -> each.toString().endsWith(".java")).toList()) {
                    all.append(Files.readString(file));
                }
            }
        }
        return all.toString();
    }

    private Set<String> keysInSources() throws IOException {
        Set<String> rooms = words.keySet().stream()
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toSet());
        Set<String> keys = new TreeSet<>();
        Matcher found = KEY.matcher(sources());
        while (found.find()) {
            String key = found.group(1);
            if (rooms.contains(key.substring(0, key.indexOf('.')))) {
                keys.add(key);
            }
        }
        return keys;
    }

    private boolean isKnown(String key) {
        return words.containsKey(key) || (words.containsKey(key + ".one") && words.containsKey(key + ".many"));
    }

    @Test
    void everyKeyInTheSourcesHasAText() throws IOException {
        Set<String> missing = new TreeSet<>(keysInSources());
        missing.removeIf(this::isKnown);
        assertEquals(Set.of(), missing, "add these to texts.properties");
    }

    /** A key stands in the sources whole, or as a beginning to which a word is added, the word being there or an id. */
    private static boolean isAsked(String key, String sources) {
        if (sources.contains('"' + key + '"')) {
            return true;
        }
        for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
            String beginning = key.substring(0, dot + 1);
            String rest = key.substring(dot + 1);
            String word = rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
            boolean named = sources.contains('"' + rest + '"') || sources.contains('"' + word + '"');
            boolean begun = sources.contains('"' + beginning + "\" + ") || sources.contains('"' + beginning + '"');
            if (begun && (named || sources.contains('"' + beginning + "\" + id"))) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyTextIsAskedForSomewhere() throws IOException {
        String sources = sources();
        Set<String> unused = new TreeSet<>(words.keySet());
        unused.removeIf(key -> isAsked(key.replaceAll("\\.(one|many)$", ""), sources));
        assertEquals(Set.of(), unused, "take these out of texts.properties");
    }

    @Test
    void oneAndManyAreToldApart() {
        assertEquals("1 batch", Texts.counted("shelf.sum.batches", 1));
        assertEquals("0 batches", Texts.counted("shelf.sum.batches", 0));
    }
}
