package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugars;

/** What lists hold has a name in every language, and every name belongs to something. */
class NamesTest {
    /** Lists that nobody reads: what they hold is typed, never shown. */
    private static final Set<String> TYPED_ONLY = Set.of("pressure-command-air");

    private static final Map<String, Locale> LANGUAGES = Map.of("en", Locale.ROOT, "de", Locale.GERMAN);

    private static List<Class<?>> enums() {
        List<Class<?>> enums = new ArrayList<>();
        for (JavaClass one : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("undercroft")) {
            if (one.isEnum()) {
                enums.add(one.reflect());
            }
        }
        return enums;
    }

    private static Stream<Listed> listed() {
        Stream<Listed> constants = enums().stream()
                .filter(Listed.class::isAssignableFrom)
                .flatMap(type -> Stream.of(type.getEnumConstants()))
                .map(Listed.class::cast);
        return Stream.concat(
                constants, Stream.of(Bottles.STANDARD, Sugars.STANDARD).flatMap(Collection::stream));
    }

    private static String key(Listed one) {
        return "name." + Keys.type(one.getClass()) + "." + one.id();
    }

    @Test
    void whateverAListHoldsIsNamedInEveryLanguage() {
        LANGUAGES.forEach((language, locale) -> {
            Set<String> names = ResourceBundle.getBundle(
                            "undercroft.wording.name",
                            locale,
                            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES))
                    .keySet();
            Set<String> missing = new TreeSet<>();
            listed().map(NamesTest::key)
                    .filter(key -> !names.contains(key))
                    .filter(key -> TYPED_ONLY.stream().noneMatch(type -> key.startsWith("name." + type + ".")))
                    .forEach(missing::add);
            assertEquals(Set.of(), missing, language);
        });
    }

    @Test
    void everyNameBelongsToSomething() {
        // The make that a command is told by its measures.
        Set<String> known = new TreeSet<>(Set.of("name.bottle-type.given"));
        listed().map(NamesTest::key).forEach(known::add);
        enums().stream()
                .filter(Class::isEnum)
                .forEach(type -> Stream.of(type.getEnumConstants())
                        .map(constant -> Keys.of("name." + Keys.type(type), (Enum<?>) constant))
                        .forEach(known::add));
        Set<String> left = new TreeSet<>(
                ResourceBundle.getBundle("undercroft.wording.name", Locale.ROOT).keySet());
        left.removeAll(known);
        assertEquals(Set.of(), left);
    }
}
