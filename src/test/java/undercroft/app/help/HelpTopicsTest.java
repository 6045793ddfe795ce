package undercroft.app.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Language;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** The help is whole in each language, calls things as they call themselves, and says what the README says. */
class HelpTopicsTest {
    private static List<HelpTopic> topics(Language language, UnitSystem units) {
        Messages messages = language.messages(Locale.ROOT);
        return HelpTopics.of(messages, QuantityFormat.of(messages, units, ZoneOffset.UTC), List.of());
    }

    private static HelpTopic topic(Language language, String id) {
        return topics(language, UnitSystem.METRIC).stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String text(HelpTopic topic) {
        return topic.blocks().toString();
    }

    /** A key that is no label any more would stop this; a bracket left over was never one. */
    @ParameterizedTest
    @EnumSource(names = {"ENGLISH", "GERMAN"})
    void everyButtonIsCalledAsItCallsItself(Language language) {
        for (HelpTopic topic : topics(language, UnitSystem.METRIC)) {
            assertFalse(topic.title().isBlank());
            if (topic.group() == HelpTopic.Group.GUIDE) {
                String text = text(topic);
                assertFalse(Pattern.compile("\\[[a-z.-]+]").matcher(text).find(), text);
            }
        }
        Messages messages = language.messages(Locale.ROOT);
        assertTrue(text(topic(language, "guide.bottling"))
                .contains(messages.of("help.called", messages.of("bottling.screen.verdict"))));
    }

    /** Written by {@code mvn -P pictures}, in each language and in both colours. */
    @Test
    void everyPictureOfTheGuideAndOfTheReadmeIsThere() throws IOException {
        Set<String> missing = new TreeSet<>();
        for (HelpTopic topic : topics(Language.ENGLISH, UnitSystem.METRIC)) {
            for (HelpBlock block : topic.blocks()) {
                if (block instanceof HelpBlock.Picture picture) {
                    for (String ending : List.of("en-light", "en-dark", "de-light", "de-dark")) {
                        Path file =
                                Path.of("src/main/resources/undercroft/guide", picture.name() + "-" + ending + ".png");
                        if (!Files.exists(file)) {
                            missing.add(file.toString());
                        }
                    }
                }
            }
        }
        Pattern.compile("assets/readme/[a-z-]+\\.png")
                .matcher(Files.readString(Path.of("README.md")))
                .results()
                .map(MatchResult::group)
                .filter(file -> !Files.exists(Path.of(file)))
                .forEach(missing::add);
        assertEquals(Set.of(), missing, "run mvn -P pictures");
    }

    @Test
    void tablesAreInTheUnitsOfTheReader() {
        String us = topics(Language.ENGLISH, UnitSystem.US).stream()
                .filter(each -> each.id().equals("numbers"))
                .map(HelpTopicsTest::text)
                .findFirst()
                .orElseThrow();
        // 4.7 bar are 68.2 psi, 31 °C are 87.8 °F (worked by hand here); a limit is rounded down.
        assertTrue(us.contains("68 psi"), us);
        assertTrue(us.contains("88 °F"), us);
        String metric = text(topic(Language.GERMAN, "numbers"));
        assertTrue(metric.contains("4,7 bar"), metric);
    }

    @Test
    void whatIsLookedForIsFoundAndNothingElse() {
        HelpViewModel model = new HelpViewModel(topics(Language.ENGLISH, UnitSystem.METRIC), Locale.ENGLISH);
        model.searchProperty().set("RIBOFLAVIN spectrum");
        assertEquals(
                List.of("numbers"),
                model.foundProperty().get().stream().map(HelpTopic::id).toList());
        assertEquals(1, model.chosenProperty().get().blocks().size());
        model.searchProperty().set("no such word anywhere");
        assertEquals(List.of(), model.foundProperty().get());
        model.open("glossary");
        assertEquals("", model.searchProperty().get());
        assertEquals("glossary", model.chosenProperty().get().id());
    }

    private static String plain(String text) {
        return text.replaceAll("[*\\s]+", " ").replace('\'', '’').strip();
    }

    @Test
    void theReadmeSaysTheSameOfTheNumbers() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        String chapter = readme.replaceAll("(?s).*\n## How the numbers are made\n|\n## .*", "");
        Messages messages = Messages.english();
        String told = topic(Language.ENGLISH, "numbers").blocks().stream()
                .map(block -> {
                    if (block instanceof HelpBlock.Terms terms) {
                        return terms.all().stream()
                                .filter(term -> !text(List.of(term)).contains(messages.of("help.source", "")))
                                .map(term -> term.name() + ". " + term.text())
                                .collect(Collectors.joining(" "));
                    }
                    boolean belongs = block instanceof HelpBlock.Paragraph paragraph
                            && Set.of(messages.of("numbers.intro"), messages.of("numbers.limits"))
                                    .contains(paragraph.text());
                    return belongs ? ((HelpBlock.Paragraph) block).text() : "";
                })
                .collect(Collectors.joining(" "));
        assertEquals(plain(told), plain(chapter), "change numbers.properties and the README together");
    }

    private static String text(List<HelpBlock.Term> terms) {
        return terms.toString();
    }

    @Test
    void everyLibraryThatTheBuildDeclaresIsNamedWithALicenceThatIsThere() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        String dependencies = pom.replaceAll("(?s).*</dependencyManagement>|<build>.*", "");
        Set<String> unnamed = new TreeSet<>();
        for (MatchResult found : Pattern.compile("(?s)<dependency>(.*?)</dependency>")
                .matcher(dependencies)
                .results()
                .toList()) {
            if (!found.group(1).contains("<scope>test</scope>")) {
                String group = found.group(1).replaceAll("(?s).*?<groupId>(.*?)</groupId>.*", "$1");
                String artifact = found.group(1).replaceAll("(?s).*?<artifactId>(.*?)</artifactId>.*", "$1");
                boolean isNamed = Library.ALL.stream()
                        .map(library -> library.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", ""))
                        .anyMatch(name ->
                                (group + artifact).replaceAll("[^a-z0-9]", "").contains(name));
                if (!isNamed) {
                    unnamed.add(group + ":" + artifact);
                }
            }
        }
        assertEquals(Set.of(), unnamed, "name these in Library");
        for (Library library : Library.ALL) {
            String file = library.text().replaceAll(".*/", "");
            List<Path> places =
                    List.of(Path.of("src/dist/licences", file), Path.of(file), Path.of("assets/fonts", file));
            assertTrue(places.stream().anyMatch(Files::exists), library + " has no text");
        }
    }
}
