package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.quantity.InvalidInput;
import undercroft.report.ShelfReport;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.DemoCellar;
import undercroft.store.Export;
import undercroft.store.LoggedTemperatures;
import undercroft.store.Rescue;
import undercroft.wording.Language;
import undercroft.wording.ShelfWords;

@Command
final class OpenCommand implements Callable<Integer> {
    /** The cellar that comes with the program. */
    static final String DEMO = "weir-house";

    private static final int TERMINAL_COLUMNS = 100;

    private final Console console;

    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder", arity = "0..1")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Option(names = "--demo")
    private boolean demo;

    OpenCommand(Console console) {
        this.console = console;
    }

    /** What was asked for by name; the window has a language of its own otherwise. */
    private Optional<Language> language() {
        return Optional.ofNullable(spec.root().findOption("--language").<String>getValue())
                .flatMap(Language::of);
    }

    @Override
    public Integer call() {
        if (folder != null && demo) {
            throw new InvalidInput("--demo", "command.fault.demo-and-folder");
        }
        if (folder != null && Rescue.of(folder).versions().isEmpty()) {
            // With nothing to restore there is no use for a window: say at once what is wrong.
            CellarStore.read(folder);
        }
        if (console.window().open(new WindowRequest(Optional.ofNullable(folder), demo, language()))) {
            return 0;
        }
        Optional<Path> shown = folder == null && !demo ? console.lastCellar().get() : Optional.ofNullable(folder);
        if (shown.isEmpty()) {
            DemoCellar invented = DemoCellar.of(DEMO);
            Map<String, TimeSeries> temperatures = invented.temperatures();
            report(invented.cellar(), new LoggedTemperatures(temperatures, List.of()), lastLogged(temperatures), DEMO);
        } else {
            Path from = shown.get();
            Cellar cellar = CellarStore.read(from);
            report(
                    cellar,
                    CellarStore.temperatures(from, cellar),
                    console.clock().instant(),
                    String.valueOf(from.toAbsolutePath().normalize().getFileName()));
        }
        return 0;
    }

    /** The demo stands still at the last moment its loggers wrote, so that it shows the same at any date. */
    private Instant lastLogged(Map<String, TimeSeries> temperatures) {
        return temperatures.values().stream()
                .filter(series -> !series.isEmpty())
                .map(series -> Instant.ofEpochSecond(series.lastTime()))
                .max(Instant::compareTo)
                .orElseGet(() -> console.clock().instant());
    }

    private void report(Cellar cellar, LoggedTemperatures temperatures, Instant at, String name) {
        ShelfMemory memory = new ShelfMemory();
        CellarOutlook outlook = Outlooks.of(cellar, temperatures.celsius(), at, List.of(), memory)
                .telling(temperatures.faults());
        ShelfWords words = ShelfWords.of(outlook, console.messages());
        Path out = Export.ofTexts().privateFolder(console.scratch()).resolve(name);
        Export.ofTexts()
                .folder(
                        out,
                        ShelfReport.of(words, Outlooks.courses(cellar, temperatures.celsius(), outlook, memory)),
                        Export.Replacing.OURS);
        console.out().println(console.messages().of("command.open.no-display"));
        console.out().println(console.messages().of("command.open.page", out.resolve(ShelfReport.PAGE)));
        console.out().println();
        console.out().print(ShelfTable.of(words, TERMINAL_COLUMNS));
        console.out().println(console.messages().of("caution.estimate"));
        console.out().flush();
    }
}
