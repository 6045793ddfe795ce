package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.store.DemoCellar;

/** The language is asked for, never taken from the machine. */
final class LanguageTest {
    private static final Locale MACHINE = Locale.getDefault();
    private static final String[] DOSE = {
        "dose", "--beer", "19L", "--warmest", "20C", "--target", "2.4vol", "--sugar", "dextrose"
    };

    @TempDir
    private Path scratch;

    @AfterEach
    void asItWas() {
        Locale.setDefault(MACHINE);
    }

    private static String[] with(String[] line, String... more) {
        List<String> all = new ArrayList<>(List.of(line));
        all.addAll(List.of(more));
        return all.toArray(new String[0]);
    }

    @Test
    void anAnswerComesInTheLanguageAskedFor() {
        String english = Terminal.run(scratch, DOSE).out();
        assertEquals(
                english, Terminal.run(scratch, with(DOSE, "--language", "en")).out());
        String german = Terminal.run(scratch, with(DOSE, "--language=de")).out();
        assertTrue(german.contains("Traubenzucker") && german.contains("Nur eine Schätzung"), german);
        assertFalse(german.contains("Estimate"), german);
        assertTrue(Terminal.run(scratch, "--language", "de", "dose").err().contains("fehlt"));
        assertTrue(Terminal.run(scratch, "dose", "--help", "--language", "de")
                .out()
                .contains("Zuckergabe"));
    }

    @Test
    void jsonIsTheSameInEveryLanguage() {
        assertEquals(
                Terminal.run(scratch, with(DOSE, "--json")).out(),
                Terminal.run(scratch, with(DOSE, "--json", "--language", "de")).out());
    }

    @Test
    void aLanguageThatIsNotSpokenIsAFault() {
        Terminal done = Terminal.run(scratch, with(DOSE, "--language", "la"));
        assertEquals(2, done.code());
        assertTrue(done.err().contains("--language") && done.err().contains("en, de"), done.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "ar", "tr"})
    void theMachinesLanguageChangesNothing(String machine) throws IOException {
        Path cellar = scratch.resolve("cellar");
        DemoCellar.of("weir-house").copyTo(cellar);
        List<String> before = everything(cellar, "before");
        Locale.setDefault(Locale.forLanguageTag(machine));
        assertEquals(before, everything(cellar, "after"));
    }

    /** Page, data, series, calendar and answers. */
    private List<String> everything(Path cellar, String name) throws IOException {
        Path out = scratch.resolve(name).resolve("out");
        List<String> all = new ArrayList<>();
        for (String[] line : List.of(
                DOSE,
                new String[] {"report", cellar.toString(), "--out", out.toString(), "--at", "2026-11-21"},
                new String[] {
                    "calendar", cellar.toString(), "--out", out.resolve("a.ics").toString(), "--at", "2026-11-21"
                },
                new String[] {"pressure", "--bottle", "longneck-330", "--volumes", "2.6vol", "--temp", "31C"},
                new String[] {"light", "--glass", "green", "--lux", "300", "--source", "window", "--hours", "5"},
                new String[] {"chill", "--bottle", "longneck-330", "--from", "20C", "--fridge", "5C", "--to", "8C"},
                new String[] {"check", cellar.toString()},
                new String[] {"report", "--help"})) {
            Terminal done = Terminal.run(scratch, line);
            all.add(done.out().replace("/" + name + "/", "/"));
        }
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                all.add(out.relativize(file) + "\n" + Files.readString(file).replaceAll("DTSTAMP:.*", ""));
            }
        }
        return all;
    }
}
