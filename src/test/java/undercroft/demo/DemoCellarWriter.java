package undercroft.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.stream.Stream;
import undercroft.store.CellarStore;

/** Writes {@code demo-data} anew from the code beside this class: run its main from the project's folder. */
public final class DemoCellarWriter {
    private DemoCellarWriter() {}

    public static void main(String[] arguments) throws IOException {
        write(Path.of("demo-data", "weir-house"));
    }

    static void write(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(one);
                }
            }
        }
        Files.createDirectories(folder.getParent());
        Clock clock = Clock.fixed(Instant.ofEpochSecond(DemoWeather.UNTIL), ZoneOffset.UTC);
        try (CellarStore store = CellarStore.create(folder, DemoCellar.cellar(), clock, "undercroft")) {
            DemoWeather.temperatures().forEach(store::replaceTemperatures);
        }
        Files.deleteIfExists(folder.resolve("cellar.lock"));
    }
}
