package undercroft;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;
import undercroft.app.Faults;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.Supposition;
import undercroft.outlook.climate.AirLogs;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.BackgroundTasks;
import undercroft.session.FolderRepository;
import undercroft.session.FollowedLogs;
import undercroft.session.Forecasts;
import undercroft.session.Workspace;
import undercroft.store.CellarStore;
import undercroft.store.DemoCellar;
import undercroft.store.RecentCellars;
import undercroft.store.Rescue;
import undercroft.store.Version;
import undercroft.view.MainWindow;
import undercroft.view.RescueDialog;
import undercroft.view.edit.EditorDialogs;
import undercroft.view.kit.CellarChooser;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;

/** Wires a cellar to the window, one at a time, and lets go of it when another one is opened. */
final class OpenCellar implements CellarChooser {
    private static final String DEMO = "weir-house";
    private static final DateTimeFormatter VERSION =
            DateTimeFormatter.ofPattern("'as it was until' d MMMM yyyy, HH:mm", Locale.ENGLISH);

    private final Stage stage;
    private final HostEnvironment host;
    private final Messages messages;
    private final Clock clock;
    private final RecentCellars recents;
    private final BooleanProperty dark = new SimpleBooleanProperty(this, "dark");
    private final Faults faults = new Faults();
    private final ExecutorService calculator = daemon("calculating");
    private final ExecutorService saving = daemon("saving");
    private CellarStore store;
    private FollowedLogs followed;
    private Path folder;

    OpenCellar(Stage stage, HostEnvironment host, Clock clock) {
        this.stage = stage;
        this.host = host;
        this.messages = Messages.in(host.locale());
        this.clock = clock;
        this.recents = RecentCellars.in(host.settingsFolder());
        WindowPreferences memory = new WindowPreferences(host.settingsFolder());
        dark.set(memory.wasDark());
        dark.addListener((property, before, after) -> memory.keepDark(after));
    }

    private static ExecutorService daemon(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "undercroft-" + name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** The demo, on a copy of its own, begun at the last moment its loggers wrote. */
    void showDemo() {
        try {
            Path copy = Files.createTempDirectory("undercroft-demo").resolve(DEMO);
            DemoCellar demo = DemoCellar.of(DEMO);
            demo.copyTo(copy);
            Instant last = demo.temperatures().values().stream()
                    .filter(series -> !series.isEmpty())
                    .map(series -> Instant.ofEpochSecond(series.lastTime()))
                    .max(Instant::compareTo)
                    .orElseGet(clock::instant);
            show(copy, Clock.offset(clock, Duration.between(clock.instant(), last)));
        } catch (IOException fault) {
            throw new InvalidInput("demo", "rescue.fault.demo", String.valueOf(fault.getMessage()));
        }
    }

    /** A cellar of the user's; one that cannot be read is offered to be rescued. */
    void show(Path wanted) {
        try {
            show(wanted, clock);
            recents.remember(wanted);
        } catch (InvalidInput fault) {
            rescue(wanted, fault);
        }
    }

    private void show(Path wanted, Clock itsClock) {
        CellarStore opened = CellarStore.open(wanted, clock, "undercroft");
        if (store != null) {
            followed.close();
            settle();
            store.close();
        }
        store = opened;
        folder = wanted;
        BackgroundTasks tasks = new BackgroundTasks(calculator, Platform::runLater);
        Workspace workspace =
                new Workspace(new FolderRepository(store), new BackgroundTasks(saving, Platform::runLater));
        Forecasts forecasts = new Forecasts(workspace, new CleanedOnce(new AirLogs()), tasks, itsClock, faults::show);
        followed = new FollowedLogs(workspace, tasks, Platform::runLater, faults::show);
        EditorDialogs editors = new EditorDialogs(messages, workspace, forecasts, tasks, itsClock, dark, () -> stage);
        new MainWindow(new WindowContext(messages, workspace, forecasts, faults, editors, this, itsClock, dark)).show(stage);
    }

    /** Outlooks over logs that are cleaned once each, not at every move of the slider. */
    private record CleanedOnce(AirLogs logs) implements Forecasts.Calculator {
        @Override
        public CellarOutlook outlook(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
            return supposed(cellar, temperatures, at, List.of());
        }

        @Override
        public CellarOutlook supposed(
                Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, List<Supposition> suppositions) {
            return Outlooks.of(cellar, temperatures, at, suppositions, logs);
        }
    }

    private void rescue(Path wanted, InvalidInput fault) {
        if (isReadable(wanted)) {
            keepOpenAndSay(fault);
            return;
        }
        Rescue rescue = Rescue.of(wanted);
        List<Version> versions = rescue.versions();
        List<String> labels = versions.stream().map(this::label).toList();
        RescueDialog.ask(messages, stage, messages.fault(fault), labels, dark.get())
                .ifPresentOrElse(
                        index -> {
                            rescue.restore(versions.get(index), clock);
                            show(wanted);
                        },
                        () -> keepOpenAndSay(fault));
    }

    /** A cellar that another window holds is whole; there is nothing to rescue. */
    private static boolean isReadable(Path wanted) {
        try {
            CellarStore.read(wanted);
            return true;
        } catch (InvalidInput unreadable) {
            return false;
        }
    }

    private void keepOpenAndSay(InvalidInput fault) {
        if (store == null) {
            showDemo();
        }
        faults.show(fault);
    }

    private String label(Version version) {
        return VERSION.format(version.until().atZone(ZoneId.systemDefault()));
    }

    @Override
    public void create() {
        Path chosen = choose("New cellar: choose or make an empty folder");
        if (chosen != null) {
            faults.guard(() -> {
                String name = String.valueOf(chosen.getFileName());
                CellarStore.create(chosen, Cellar.empty(name, ZoneId.systemDefault()), clock, "undercroft")
                        .close();
                show(chosen);
            });
        }
    }

    @Override
    public void open() {
        Path chosen = choose("Open a cellar folder");
        if (chosen != null) {
            faults.guard(() -> show(chosen));
        }
    }

    private Path choose(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        chooser.setInitialDirectory(host.home().toFile());
        File chosen = chooser.showDialog(stage);
        return chosen == null ? null : chosen.toPath();
    }

    @Override
    public List<Recent> recent() {
        return recents.paths().stream()
                .filter(path -> !path.equals(folder))
                .flatMap(path -> Stream.of(path).filter(Files::isDirectory))
                .map(path -> new Recent(String.valueOf(path.getFileName()), path.toString()))
                .toList();
    }

    @Override
    public void reopen(Recent recent) {
        faults.guard(() -> show(Path.of(recent.folder())));
    }

    /** Waits for what is still to be saved, then lets go of the folder. */
    void close() {
        if (followed != null) {
            followed.close();
        }
        settle();
        calculator.shutdownNow();
        if (store != null) {
            store.close();
        }
    }

    private void settle() {
        try {
            saving.submit(() -> {}).get(30, TimeUnit.SECONDS);
        } catch (Exception late) {
            faults.show(new InvalidInput("", "rescue.fault.late", String.valueOf(late.getMessage())));
        }
    }
}
