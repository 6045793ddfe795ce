package undercroft;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.nio.file.Files;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Calendar;
import java.util.Date;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Pattern;

/**
 * What a run may take from the machine it runs on, and where. What hides a language, a zone or a character set in a
 * call of the JDK's own ({@code String.format} without a locale, a reader without a charset) is refused by the
 * forbidden-apis step of the build, which knows all of them by name.
 */
@AnalyzeClasses(packages = "undercroft", importOptions = MainSources.class)
final class HiddenMachineTest {
    private static final Pattern NOW_OF_THE_MACHINE =
            Pattern.compile("java\\.time\\.[\\w.]+\\.now\\((java\\.time\\.ZoneId)?\\)");

    private static final Map<Class<?>, Set<String>> ASKING = Map.of(
            Clock.class, Set.of("systemUTC", "systemDefaultZone", "system", "tickMillis", "tickSeconds", "tickMinutes"),
            ZoneId.class, Set.of("systemDefault"),
            TimeZone.class, Set.of("getDefault", "setDefault"),
            Locale.class, Set.of("getDefault", "setDefault"),
            Calendar.class, Set.of("getInstance"),
            System.class,
                    Set.of(
                            "currentTimeMillis",
                            "getenv",
                            "getProperty",
                            "getProperties",
                            "setProperty",
                            "exit",
                            "console"),
            Files.class, Set.of("createTempFile", "createTempDirectory"),
            File.class, Set.of("createTempFile"));

    @ArchTest
    static final ArchRule ONLY_THE_FRONT_DOOR_ASKS_THE_MACHINE = noClasses()
            .that()
            .resideOutsideOfPackage("undercroft")
            .should()
            .accessTargetWhere(asksTheMachine())
            .because(
                    "a hidden clock, zone, language, folder or environment makes two runs differ and cannot be tested");

    @ArchTest
    static final ArchRule NOBODY_MAKES_AN_OLD_DATE = noClasses()
            .should()
            .callConstructor(Date.class)
            .because("it reads the clock of the machine, and java.time has better");

    @ArchTest
    static final ArchRule ONLY_THE_FRONT_DOOR_HAS_STREAMS = noClasses()
            .that()
            .resideOutsideOfPackage("undercroft")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in")
            .because("commands answer to the console they are given, so that tests read what they say");

    private static DescribedPredicate<JavaAccess<?>> asksTheMachine() {
        return DescribedPredicate.describe("asks the machine", access -> {
            AccessTarget target = access.getTarget();
            return NOW_OF_THE_MACHINE.matcher(target.getFullName()).matches()
                    || ASKING.entrySet().stream()
                            .anyMatch(one -> target.getOwner().isEquivalentTo(one.getKey())
                                    && one.getValue().contains(target.getName()));
        });
    }
}
