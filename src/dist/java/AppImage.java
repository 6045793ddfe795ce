import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Makes the program with a runtime of its own in {@code target/dist/undercroft}: jlink cuts the runtime, jpackage puts
 * launcher, runtime and libraries together, and a run of the program teaches the class archive what a start needs.
 *
 * <p>{@code mvn package -P dist} runs it as {@code java AppImage.java <project> <version> <time> <type>}; the type is
 * {@code app-image}, or on their own systems {@code msi}, {@code dmg}.
 */
public final class AppImage {
    /** What program and libraries need: java.desktop prints, localedata knows the two languages, zipfs reads the jar. */
    private static final String MODULES =
            "java.base,java.desktop,java.logging,java.xml,jdk.localedata,jdk.crypto.ec,jdk.unsupported,jdk.zipfs";

    /** The simple collector starts soonest; on few cores the second compiler takes more from a start than it gives. */
    private static final List<String> OPTIONS = List.of(
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-XX:-UsePerfData",
            "--enable-native-access=ALL-UNNAMED",
            "--sun-misc-unsafe-memory-access=allow");

    private static final String ARCHIVE = "undercroft.aot";
    private static final int SECONDS_TO_OPEN = 40;

    private final Path project;
    private final Path target;
    private final Path image;
    private final String version;
    private final FileTime time;
    private final boolean linux = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");

    private AppImage(Path project, String version, Instant time) {
        this.project = project;
        this.target = project.resolve("target/dist");
        this.image = target.resolve("undercroft");
        this.version = version;
        this.time = FileTime.from(time);
    }

    public static void main(String[] arguments) throws Exception {
        AppImage made = new AppImage(Path.of(arguments[0]), arguments[1], Instant.parse(arguments[2]));
        made.make();
        if (!arguments[3].equals("app-image")) {
            made.wrap(arguments[3]);
        }
    }

    private void make() throws Exception {
        delete(target);
        Path input = Files.createDirectories(target.resolve("input"));
        libraries(input);
        Licences.collect(project, input);
        Path runtime = target.resolve("runtime");
        // Modules are left uncompressed: they are read faster, and the package around them is compressed as a whole.
        tool("jlink", "--add-modules", MODULES, "--include-locales", "en,de", "--strip-debug", "--no-header-files",
                "--no-man-pages", "--compress", "zip-0", "--output", runtime.toString());
        List<String> packing = new ArrayList<>(List.of(
                "--type", "app-image", "--name", "undercroft", "--app-version", version, "--dest", target.toString(),
                "--input", input.toString(), "--main-jar", "undercroft.jar", "--main-class", "undercroft.Main",
                "--runtime-image", runtime.toString(), "--vendor", "Undercroft"));
        OPTIONS.forEach(option -> packing.addAll(List.of("--java-options", option)));
        packing.addAll(List.of("--java-options", "-XX:AOTCache=$APPDIR/" + ARCHIVE));
        tool("jpackage", packing.toArray(String[]::new));
        if (linux) {
            Files.deleteIfExists(image.resolve("lib/undercroft.png"));
            stamp();
            archive();
        }
        if (linux) {
            share();
        }
        stamp();
        delete(input);
        delete(runtime);
        System.out.printf(Locale.ROOT, "%s: %d MB%n", image, size(image) >> 20);
    }

    /** The program's jar and its libraries; the toolkit's native code beside them, where it is loaded without a copy. */
    private void libraries(Path input) throws IOException {
        Files.copy(project.resolve("target/undercroft.jar"), input.resolve("undercroft.jar"));
        for (Path jar : list(project.resolve("target/lib"))) {
            if (Files.size(jar) < 1000 && jar.getFileName().toString().startsWith("javafx-")) {
                continue;
            }
            Path copy = input.resolve(jar.getFileName());
            if (jar.getFileName().toString().startsWith("javafx-graphics-") && linux) {
                withoutNatives(jar, copy, input);
            } else {
                Files.copy(jar, copy);
            }
        }
    }

    private static void withoutNatives(Path jar, Path copy, Path natives) throws IOException {
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar));
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(copy))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (entry.getName().endsWith(".so")) {
                    Files.copy(in, natives.resolve(entry.getName()));
                } else {
                    ZipEntry kept = new ZipEntry(entry.getName());
                    kept.setLastModifiedTime(entry.getLastModifiedTime());
                    out.putNextEntry(kept);
                    in.transferTo(out);
                }
            }
        }
    }

    /**
     * Runs the program once and keeps the classes it needed, linked and profiled. With a display, or a virtual one,
     * that is a copy of the demo opened as a cellar of one's own; without either it is the demo's report, and the window
     * starts slower.
     */
    private void archive() throws Exception {
        Path app = image.resolve("lib/app");
        Path learned = target.resolve("learned.aotconf");
        String[] display = display();
        List<String> command = java(app);
        command.addAll(2, List.of("-XX:AOTMode=record", "-XX:AOTConfiguration=" + learned));
        Process screen = null;
        Path home = Files.createTempDirectory("undercroft-home");
        try {
            String name = System.getenv().getOrDefault("DISPLAY", "");
            if (display.length > 0) {
                screen = new ProcessBuilder(display).redirectError(ProcessBuilder.Redirect.DISCARD).start();
                name = ":" + screen.inputReader().readLine();
            }
            if (name.isBlank()) {
                System.out.println("No display and no Xvfb: the class archive learns the commands, not the window.");
                command.addAll(List.of("report", project.resolve("demo-data/weir-house").toString(), "--out",
                        home.toString()));
            } else {
                Path cellar = home.resolve("cellar");
                copyAll(project.resolve("demo-data/weir-house"), cellar);
                command.addAll(List.of("open", cellar.toString()));
            }
            ProcessBuilder run = new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(target.resolve("learned.log").toFile());
            run.environment().put("DISPLAY", name);
            run.environment().put("XDG_CONFIG_HOME", home.toString());
            Process learning = run.start();
            if (!name.isBlank()) {
                learning.waitFor(SECONDS_TO_OPEN, TimeUnit.SECONDS);
                learning.destroy();
            }
            learning.waitFor();
        } finally {
            if (screen != null) {
                screen.destroy();
            }
            delete(home);
        }
        List<String> creating = java(app);
        creating.remove(creating.size() - 1);
        creating.addAll(2, List.of("-XX:AOTMode=create", "-XX:AOTConfiguration=" + learned,
                "-XX:AOTCache=" + app.resolve(ARCHIVE)));
        run(creating);
        if (Files.notExists(app.resolve(ARCHIVE))) {
            throw new IOException("the class archive was not made; see " + target.resolve("learned.log"));
        }
    }

    private static String[] display() {
        boolean has = !System.getenv().getOrDefault("DISPLAY", "").isBlank();
        boolean virtual = Stream.of(System.getenv("PATH").split(":")).map(Path::of)
                .anyMatch(folder -> Files.isExecutable(folder.resolve("Xvfb")));
        return has || !virtual ? new String[0]
                : new String[] {"Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24", "-nolisten", "tcp"};
    }

    /** The command line that the launcher makes, so that the archive fits it. */
    private List<String> java(Path app) throws IOException {
        String path = Files.readAllLines(app.resolve("undercroft.cfg")).stream()
                .filter(line -> line.startsWith("app.classpath="))
                .map(line -> line.substring(line.indexOf('=') + 1).replace("$APPDIR", app.toString()))
                .collect(Collectors.joining(":"));
        List<String> command = new ArrayList<>(List.of(image.resolve("lib/runtime/bin/java").toString()));
        command.addAll(OPTIONS);
        command.addAll(List.of("-cp", path, "undercroft.Main"));
        return command;
    }

    /** What a Linux desktop wants to know of a program, laid out as below {@code /usr/share}. */
    private void share() throws IOException {
        Path share = target.resolve("share");
        Path linuxFiles = project.resolve("src/dist/linux");
        copy(linuxFiles.resolve("undercroft.desktop"), share.resolve("applications/undercroft.desktop"));
        String metadata = "io.github.undercroft.undercroft.metainfo.xml";
        copy(linuxFiles.resolve(metadata), share.resolve("metainfo").resolve(metadata));
        String unit = "undercroft-watch.service";
        copy(linuxFiles.resolve(unit), share.resolve("systemd/user").resolve(unit));
        Path icons = project.resolve("assets/icons");
        copy(icons.resolve("undercroft.svg"), share.resolve("icons/hicolor/scalable/apps/undercroft.svg"));
        for (Path icon : list(icons)) {
            String size = icon.getFileName().toString().replaceAll("\\D", "");
            if (!size.isEmpty()) {
                copy(icon, share.resolve("icons/hicolor/" + size + "x" + size + "/apps/undercroft.png"));
            }
        }
        Path manual = share.resolve("man/man1/undercroft.1.gz");
        Files.createDirectories(manual.getParent());
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(manual))) {
            Files.copy(linuxFiles.resolve("undercroft.1"), out);
        }
        Path copyright = share.resolve("doc/undercroft/copyright");
        Files.createDirectories(copyright.getParent());
        StringBuilder all = new StringBuilder("Undercroft is under the Apache License 2.0. Its libraries, typeface and runtime are"
                + " under these licences;\nthose of the runtime's own parts lie in /usr/lib/undercroft/lib/runtime/legal.\n");
        for (Path text : list(image.resolve("lib/app/licences"))) {
            all.append("\n==== ").append(text.getFileName()).append("\n\n").append(Files.readString(text));
        }
        Files.writeString(copyright, all);
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
    }

    private static void copyAll(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                copy(file, to.resolve(from.relativize(file)));
            }
        }
    }

    /** Archive and package name files by their time, which must be the same when they are unpacked elsewhere. */
    private void stamp() throws IOException {
        try (Stream<Path> all = Files.walk(image)) {
            for (Path file : all.toList()) {
                Files.setLastModifiedTime(file, time);
            }
        }
    }

    private void wrap(String type) {
        tool("jpackage", "--type", type, "--name", "undercroft", "--app-version", version, "--app-image",
                image.toString(), "--dest", target.toString(), "--license-file", project.resolve("LICENSE").toString());
    }

    private static void tool(String name, String... arguments) {
        ToolProvider tool = ToolProvider.findFirst(name).orElseThrow(() -> new IllegalStateException(name + " is missing"));
        if (tool.run(System.out, System.err, arguments) != 0) {
            throw new IllegalStateException(name + " failed: " + String.join(" ", arguments));
        }
    }

    private static void run(List<String> command) throws Exception {
        if (new ProcessBuilder(command).inheritIO().start().waitFor() != 0) {
            throw new IOException("failed: " + String.join(" ", command));
        }
    }

    static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private static long size(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path file : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** The licence of every library, taken from its jar or from {@code src/dist/licences}. */
    private static final class Licences {
        private static void collect(Path project, Path input) throws IOException {
            Path all = Files.createDirectories(input.resolve("licences"));
            Files.copy(project.resolve("LICENSE"), all.resolve("undercroft.txt"));
            Files.copy(project.resolve("assets/fonts/OFL.txt"), all.resolve("inter.txt"));
            for (Path jar : list(input)) {
                String name = jar.getFileName().toString();
                if (name.endsWith(".jar") && !name.equals("undercroft.jar")) {
                    String library = name.replaceFirst("-\\d.*", "");
                    if (!fromJar(jar, all, library) && !fromProject(project, all, library)) {
                        throw new IOException("no licence text for " + name + "; put it into src/dist/licences");
                    }
                }
            }
        }

        private static boolean fromJar(Path jar, Path all, String library) throws IOException {
            boolean found = false;
            try (ZipInputStream in = new ZipInputStream(Files.newInputStream(jar))) {
                for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                    String name = entry.getName().toLowerCase(Locale.ROOT);
                    if (name.startsWith("meta-inf/") && (name.contains("license") || name.contains("notice"))
                            && !entry.isDirectory()) {
                        String file = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                        Files.copy(in, all.resolve(library + "-" + file.replaceFirst("\\.txt$", "") + ".txt"));
                        found = true;
                    }
                }
            }
            return found;
        }

        /** A text may serve several libraries: {@code javafx.txt} all those that begin so. */
        private static boolean fromProject(Path project, Path all, String library) throws IOException {
            for (Path text : list(project.resolve("src/dist/licences"))) {
                String name = text.getFileName().toString().replaceFirst("\\.txt$", "");
                if (library.startsWith(name)) {
                    Files.copy(text, all.resolve(text.getFileName()), StandardCopyOption.REPLACE_EXISTING);
                    return true;
                }
            }
            return false;
        }
    }
}
