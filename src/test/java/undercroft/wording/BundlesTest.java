package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Sources and bundles name the same keys. */
class BundlesTest {
    private static final Path FOLDER = Path.of("src/main/resources/undercroft/wording");
    private static final Pattern KEY = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)(\\.?)\"");
    /** The library of the command line reads it under keys of its own; {@code UsageTest} holds it to the commands. */
    private static final String USAGE = "usage";

    private static final String FILE = ".*\\.(css|csv|html|json|lock|svg)";
    /** Keys of names are made of a type and a constant or id; {@code NamesTest} holds those to the types. */
    private static final String NAMES = "name.";

    private final Map<String, String> texts = texts();
    private final String sources = sources();

    private static Map<String, String> texts() {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(one -> !one.toString().contains("_")).toList()) {
                String bundle = file.getFileName().toString().replace(".properties", "");
                Properties read = new Properties();
                read.load(Files.newBufferedReader(file));
                if (bundle.equals(USAGE)) {
                    continue;
                }
                read.forEach((key, text) -> {
                    assertEquals(bundle, key.toString().replaceAll("\\..*", ""), "the bundle of " + key);
                    all.put(key.toString(), text.toString());
                });
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return all;
    }

    private static String sources() {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return all.toString();
    }

    private Set<String> named() {
        Set<String> bundles = texts.keySet().stream()
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toSet());
        Set<String> keys = new TreeSet<>();
        Matcher found = KEY.matcher(sources);
        while (found.find()) {
            String key = found.group(1);
            if (bundles.contains(key.substring(0, key.indexOf('.'))) && !key.matches(FILE)) {
                keys.add(key + found.group(2));
            }
        }
        return keys;
    }

    private boolean isText(String key) {
        String beginning = key.endsWith(".") ? key : key + ".";
        return texts.containsKey(key) || texts.keySet().stream().anyMatch(one -> one.startsWith(beginning));
    }

    @Test
    void everyKeyInTheSourcesHasAText() {
        Set<String> missing = named();
        missing.removeIf(this::isText);
        assertEquals(Set.of(), missing, "add these to the bundle that their first word names");
    }

    @Test
    void everyTextIsAskedFor() {
        Set<String> named = named();
        Set<String> unused = new TreeSet<>(texts.keySet());
        unused.removeIf(key -> key.startsWith(NAMES) || named.contains(key) || isBegun(key, named));
        assertEquals(Set.of(), unused, "take these out of their bundle, or ask for them");
    }

    /** A key may be made of a beginning that stands in the sources and the name of a constant or an id. */
    private boolean isBegun(String key, Set<String> named) {
        for (int dot = key.indexOf('.'); dot > 0; dot = key.indexOf('.', dot + 1)) {
            String beginning = key.substring(0, dot);
            boolean open = (!texts.containsKey(beginning) && named.contains(beginning))
                    || named.contains(beginning + ".")
                    || sources.contains('"' + beginning + ".\"");
            if (open) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyTextIsAPatternThatCanBeFilledIn() {
        Object[] arguments = {1, 2, 3, 4, 5, 6, 7};
        texts.forEach((key, text) -> {
            String said = new MessageFormat(text, Locale.UK).format(arguments);
            assertEquals(-1, said.indexOf('{'), key + " would read: " + said);
        });
    }

    /** The plain apostrophe is a sign of the pattern language: it would vanish, and the arguments after it with it. */
    @Test
    void textsUseTheTypographicApostrophe() {
        Set<String> plain = new TreeSet<>();
        texts.forEach((key, text) -> {
            if (text.indexOf('\'') >= 0) {
                plain.add(key);
            }
        });
        assertEquals(Set.of(), plain);
    }
}
