package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import undercroft.demo.DemoShelf;
import undercroft.quantity.UnitSystem;
import undercroft.report.Shelves;

/** Every language says all that English says, with the same things in it. */
class LanguagesTest {
    private static final Path FOLDER = Path.of("src/main/resources/undercroft/wording");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)|\\$\\{([A-Z-]+)");
    private static final Pattern WORD = Pattern.compile("\\p{L}{4,}");

    /** Texts that are right in both languages: names, a proper trade word, a list of ids. */
    private static final Set<String> ALIKE =
            Set.of("app.name", "bottling.wash.millilitres", "bar.language.english", "bar.language.german");

    private static Map<String, String> texts(String ending) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(
                            one -> one.getFileName().toString().matches("[a-z]+" + ending + "\\.properties"))
                    .toList()) {
                Properties read = new Properties();
                read.load(Files.newBufferedReader(file));
                String bundle = file.getFileName().toString().replaceAll("[_.].*", "");
                read.forEach((key, text) -> all.put(bundle + "/" + key, text.toString()));
            }
        }
        return all;
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void germanHasTheSameKeys() throws IOException {
        assertEquals(texts("").keySet(), texts("_de").keySet());
    }

    @Test
    void germanPutsTheSameThingsIntoEverySentence() throws IOException {
        Map<String, String> german = texts("_de");
        Set<String> different = new TreeSet<>();
        texts("").forEach((key, text) -> {
            if (!places(text).equals(places(german.getOrDefault(key, "")))) {
                different.add(key);
            }
        });
        assertEquals(Set.of(), different);
    }

    @Test
    void noSentenceIsLeftInEnglish() throws IOException {
        Map<String, String> german = texts("_de");
        Set<String> alike = new TreeSet<>();
        texts("").forEach((key, text) -> {
            String plain = PLACE.matcher(text).replaceAll("");
            boolean words = WORD.matcher(plain).results().count() > 1;
            if (words && text.equals(german.get(key)) && !ALIKE.contains(key.replaceAll(".*/", ""))) {
                alike.add(key);
            }
        });
        assertEquals(Set.of(), alike, "translate these, or say that they are right as they are");
    }

    @Test
    void germanWritesNumbersAndDatesAsGermansDo() {
        Messages german = Language.GERMAN.messages(Locale.ROOT);
        QuantityFormat words =
                QuantityFormat.of(german, UnitSystem.METRIC, DemoShelf.cellar().zone());
        assertEquals("2,4 vol", words.volumes(2.4));
        assertTrue(words.full(Shelves.DEMO.at()).contains("21. November 2026"), words.full(Shelves.DEMO.at()));
    }

    @Test
    void aLanguageThatIsNotSpokenIsEnglish() {
        assertEquals(
                "en",
                Language.SYSTEM.messages(Locale.forLanguageTag("ar")).locale().getLanguage());
        assertEquals(
                "de",
                Language.SYSTEM
                        .messages(Locale.forLanguageTag("de-AT"))
                        .locale()
                        .getLanguage());
        assertEquals(
                "AT",
                Language.GERMAN
                        .messages(Locale.forLanguageTag("de-AT"))
                        .locale()
                        .getCountry());
        assertEquals("en", Language.ENGLISH.messages(Locale.GERMANY).locale().getLanguage());
    }
}
