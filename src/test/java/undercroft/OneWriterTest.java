package undercroft;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.util.Formatter;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What no class of the program may do, read from the class files: write but in one room, open the network, run anything,
 * make objects of a type that a file names. The one exception is the room that hears live sensors.
 */
@AnalyzeClasses(packages = "undercroft", importOptions = MainSources.class)
final class OneWriterTest {
    private static final Set<String> READING = Set.of(
            "exists",
            "notExists",
            "isDirectory",
            "isRegularFile",
            "isSymbolicLink",
            "isReadable",
            "isWritable",
            "isHidden",
            "isSameFile",
            "size",
            "list",
            "walk",
            "find",
            "lines",
            "newInputStream",
            "newBufferedReader",
            "newDirectoryStream",
            "readAllBytes",
            "readAllLines",
            "readString",
            "readAttributes",
            "getAttribute",
            "getFileStore",
            "getLastModifiedTime",
            "getPosixFilePermissions",
            "mismatch",
            "probeContentType");

    private static final Set<String> CHANGING_A_FILE = Set.of(
            "createNewFile",
            "createTempFile",
            "delete",
            "deleteOnExit",
            "mkdir",
            "mkdirs",
            "renameTo",
            "setExecutable",
            "setLastModified",
            "setReadOnly",
            "setReadable",
            "setWritable");

    private static final Pattern WRITERS = Pattern.compile("java\\.io\\.(FileOutputStream|FileWriter|RandomAccessFile)"
            + "|java\\.nio\\.channels\\.AsynchronousFileChannel|java\\.util\\.logging\\.FileHandler"
            + "|java\\.util\\.prefs\\..*|java\\.util\\.zip\\.Zip(File|OutputStream)|javax\\.imageio\\..*");

    private static final Pattern NETWORK = Pattern.compile("java\\.net\\.(?!URI$|URL$|URISyntaxException$).*"
            + "|java\\.nio\\.channels\\.(Async.*|Datagram.*|.*Socket.*|Selector)"
            + "|javax\\.(net|naming|management\\.remote|mail)\\..*|java\\.rmi\\..*|javafx\\.scene\\.web\\..*"
            + "|com\\.sun\\.net\\..*|com\\.hivemq\\..*|io\\.netty\\..*");

    private static final Pattern RUNNING = Pattern.compile("java\\.lang\\.Process(Builder|Handle|)(\\$.*)?"
            + "|java\\.awt\\.Desktop.*|javax\\.script\\..*|javafx\\.application\\.HostServices"
            + "|java\\.lang\\.instrument\\..*|javax\\.tools\\..*");

    private static final Pattern TYPES_BY_NAME =
            Pattern.compile("java\\.io\\.Object(InputStream|InputFilter)(\\$.*)?|java\\.beans\\.XML.*"
                    + "|com\\.fasterxml\\.jackson\\.annotation\\.JsonTypeInfo.*|com\\.fasterxml\\.jackson\\..*jsontype\\..*"
                    + "|java\\.lang\\.reflect\\.(Constructor|Method|Proxy)|java\\.net\\.URLClassLoader"
                    + "|java\\.lang\\.invoke\\.MethodHandles\\$Lookup|java\\.util\\.ServiceLoader");

    @ArchTest
    static final ArchRule ONLY_ONE_ROOM_WRITES = noClasses()
            .that()
            .resideOutsideOfPackage("undercroft.store.disk")
            .should()
            .accessTargetWhere(writes())
            .orShould()
            .dependOnClassesThat(named(WRITERS))
            .because("a write that is not atomic, follows a link or is not forced to the disk loses somebody's years of"
                    + " notes; give it to undercroft.store.disk or undercroft.store.Export");

    @ArchTest
    static final ArchRule ONLY_WHAT_HEARS_SENSORS_OPENS_THE_NETWORK = noClasses()
            .that()
            .resideOutsideOfPackage("undercroft.listen")
            .should()
            .dependOnClassesThat(named(NETWORK))
            .orShould()
            .accessTargetWhere(calls("opens an address", "java.net.URL", "openStream", "openConnection", "getContent"))
            .because(
                    "a cellar is nobody else's; the one exception goes to the one address that the user's settings name");

    @ArchTest
    static final ArchRule NOBODY_RUNS_ANYTHING = noClasses()
            .should()
            .dependOnClassesThat(named(RUNNING))
            .orShould()
            .accessTargetWhere(calls("runs a program", "java.lang.Runtime", "exec", "load", "loadLibrary"))
            .orShould()
            .accessTargetWhere(calls("loads foreign code", "java.lang.System", "load", "loadLibrary"))
            .because("a folder from a stranger must be harmless");

    @ArchTest
    static final ArchRule NO_FILE_NAMES_A_TYPE = noClasses()
            .should()
            .dependOnClassesThat(named(TYPES_BY_NAME))
            .orShould()
            .accessTargetWhere(calls("looks a class up", "java.lang.Class", "forName", "newInstance"))
            .orShould()
            .accessTargetWhere(calls("looks a class up", "java.lang.ClassLoader", "loadClass"))
            .orShould()
            .accessTargetWhere(DescribedPredicate.describe(
                    "maps JSON onto types",
                    access -> access.getTarget().getOwner().getName().startsWith("com.fasterxml.jackson.databind.")
                            && Set.of(
                                            "activateDefaultTyping",
                                            "enableDefaultTyping",
                                            "activateDefaultTypingAsProperty",
                                            "convertValue",
                                            "treeToValue",
                                            "readValue",
                                            "readerFor",
                                            "forType")
                                    .contains(access.getTarget().getName())))
            .because("what a file holds must choose no code; JSON is read as a tree, key by key");

    private static DescribedPredicate<JavaClass> named(Pattern names) {
        return DescribedPredicate.describe(
                "named " + names, one -> names.matcher(one.getName()).matches());
    }

    private static DescribedPredicate<JavaAccess<?>> writes() {
        return DescribedPredicate.describe("writes to a disk", access -> {
            AccessTarget target = access.getTarget();
            JavaClass owner = target.getOwner();
            String name = target.getName();
            if (owner.isEquivalentTo(Files.class)) {
                return !READING.contains(name);
            }
            if (owner.isEquivalentTo(File.class)) {
                return CHANGING_A_FILE.contains(name);
            }
            if (owner.isEquivalentTo(FileChannel.class)) {
                return Set.of("open", "write", "truncate", "transferFrom", "map")
                        .contains(name);
            }
            boolean opensByName = owner.isEquivalentTo(PrintWriter.class)
                    || owner.isEquivalentTo(PrintStream.class)
                    || owner.isEquivalentTo(Formatter.class);
            return opensByName
                    && name.equals("<init>")
                    && target.getFullName().matches(".*\\((java\\.lang\\.String|java\\.io\\.File)[,)].*");
        });
    }

    private static DescribedPredicate<JavaAccess<?>> calls(String what, String owner, String... names) {
        return DescribedPredicate.describe(
                what,
                access -> access.getTarget().getOwner().getName().equals(owner)
                        && Set.of(names).contains(access.getTarget().getName()));
    }
}
