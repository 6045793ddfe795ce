package undercroft;

import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;
import undercroft.app.Faults;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.session.BackgroundTasks;
import undercroft.session.OpenCellar;
import undercroft.session.WorkThreads;
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
import undercroft.wording.QuantityFormat;

/**
 * Leads from one cellar to the next: all of the new one is read and built, in the background, before the one that is
 * shown is left. For the window's thread.
 */
final class CellarSwitch implements CellarChooser, AutoCloseable {
    private static final String DEMO = "weir-house";
    private static final String WRITTEN_BY = "undercroft";
    private static final int LONGEST_LEAVE_SECONDS = 30;

    private final Stage stage;
    private final HostEnvironment host;
    private final Messages messages;
    private final Clock clock;
    private final RecentCellars recents;
    private final WindowPreferences preferences;
    private final ExecutorService doors = Executors.newSingleThreadExecutor(CellarSwitch::daemon);
    private final BackgroundTasks opening = new BackgroundTasks(doors, Platform::runLater);
    private boolean dark;
    private boolean busy;
    private Shown shown;

    /** For the window that is being built. */
    private InvalidInput unsaid;

    private List<Path> known = List.of();

    /** What is on the stage. Its faults and colours are its own, so that nothing which stays holds it once it is left. */
    private record Shown(OpenCellar cellar, Faults faults) {}

    /** An open store and the time its cellar lives in. */
    private record Door(CellarStore store, Clock clock, List<Path> recents) {}

    CellarSwitch(Stage stage, HostEnvironment host, Clock clock) {
        this.stage = stage;
        this.host = host;
        this.messages = Messages.in(host.locale());
        this.clock = clock;
        this.recents = RecentCellars.in(host.settingsFolder());
        this.preferences = new WindowPreferences(host.settingsFolder());
        this.dark = preferences.wasDark();
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "undercroft-opening");
        thread.setDaemon(true);
        return thread;
    }

    /** The demo, on a copy of its own, begun at the last moment its loggers wrote. */
    void showDemo() {
        show(
                () -> {
                    Path copy = host.privateFolder().resolve(DEMO);
                    DemoCellar demo = DemoCellar.of(DEMO);
                    demo.copyTo(copy);
                    Instant last = demo.temperatures().values().stream()
                            .filter(series -> !series.isEmpty())
                            .map(series -> Instant.ofEpochSecond(series.lastTime()))
                            .max(Instant::compareTo)
                            .orElseGet(clock::instant);
                    Clock then = Clock.offset(clock, Duration.between(clock.instant(), last));
                    return new Door(CellarStore.open(copy, clock, WRITTEN_BY), then, recents.paths());
                },
                this::say);
    }

    /** A cellar of the user's; one that cannot be read is offered to be rescued. */
    void show(Path wanted) {
        if (shown != null && isShown(wanted)) {
            stage.toFront();
            return;
        }
        show(
                () -> {
                    CellarStore store = CellarStore.open(wanted, clock, WRITTEN_BY);
                    recents.remember(wanted);
                    return new Door(store, clock, recents.paths());
                },
                fault -> rescue(wanted, fault));
    }

    private boolean isShown(Path wanted) {
        return shown.cellar().folder().equals(wanted.toAbsolutePath().normalize());
    }

    private void show(Callable<Door> wanted, Consumer<InvalidInput> whenRefused) {
        if (busy) {
            return;
        }
        busy = true;
        Faults faults = new Faults();
        opening.run(
                () -> {
                    Door door = wanted.call();
                    WorkThreads threads = WorkThreads.answeringOn(Platform::runLater);
                    return new Opened(OpenCellar.of(door.store(), door.clock(), threads, faults::show), door.recents());
                },
                opened -> {
                    busy = false;
                    known = opened.recents();
                    turnTo(new Shown(opened.cellar(), faults));
                },
                fault -> {
                    busy = false;
                    whenRefused.accept(fault);
                });
    }

    private record Opened(OpenCellar cellar, List<Path> recents) {}

    private void turnTo(Shown next) {
        Shown left = shown;
        OpenCellar cellar = next.cellar();
        BooleanProperty colours = new SimpleBooleanProperty(this, "dark", dark);
        colours.addListener((property, before, after) -> keepColours(after));
        EditorDialogs editors = new EditorDialogs(
                messages, cellar.workspace(), cellar.forecasts(), cellar.tasks(), cellar.clock(), colours, () -> stage);
        MainWindow window = new MainWindow(new WindowContext(
                messages,
                cellar.workspace(),
                cellar.forecasts(),
                next.faults(),
                editors,
                this,
                cellar.clock(),
                cellar.ticker().nowProperty(),
                colours));
        shown = next;
        window.show(stage);
        if (unsaid != null) {
            say(unsaid);
            unsaid = null;
        }
        if (left != null) {
            leave(left.cellar());
        }
    }

    /** What is still to be saved is saved while the next cellar is looked at already. */
    private void leave(OpenCellar left) {
        left.end();
        opening.run(
                () -> {
                    left.close();
                    return left.folder();
                },
                folder -> {},
                this::say);
    }

    private void keepColours(boolean nowDark) {
        dark = nowDark;
        opening.run(
                () -> {
                    preferences.keepDark(nowDark);
                    return nowDark;
                },
                kept -> {},
                this::say);
    }

    private record Damage(Rescue rescue, List<Version> versions) {}

    private void rescue(Path wanted, InvalidInput fault) {
        opening.run(
                () -> {
                    // A cellar that another window holds is whole; there is nothing to rescue.
                    if (isReadable(wanted)) {
                        throw fault;
                    }
                    Rescue rescue = Rescue.of(wanted);
                    return new Damage(rescue, rescue.versions());
                },
                damage -> offer(wanted, fault, damage),
                this::keepOpenAndSay);
    }

    private void offer(Path wanted, InvalidInput fault, Damage damage) {
        List<String> labels = damage.versions().stream().map(this::label).toList();
        RescueDialog.ask(messages, stage, messages.fault(fault), labels, dark)
                .ifPresentOrElse(
                        index -> opening.run(
                                () -> damage.rescue().restore(damage.versions().get(index), clock),
                                restored -> show(wanted),
                                this::keepOpenAndSay),
                        () -> keepOpenAndSay(fault));
    }

    private static boolean isReadable(Path wanted) {
        try {
            CellarStore.read(wanted);
            return true;
        } catch (InvalidInput unreadable) {
            return false;
        }
    }

    private void keepOpenAndSay(InvalidInput fault) {
        if (shown == null) {
            showDemo();
        }
        say(fault);
    }

    private void say(InvalidInput fault) {
        if (shown == null) {
            unsaid = fault;
        } else {
            shown.faults().show(fault);
        }
    }

    private String label(Version version) {
        QuantityFormat format = QuantityFormat.of(messages, UnitSystem.METRIC, ZoneId.systemDefault());
        return messages.of("rescue.version", format.dayAndTime(version.until()));
    }

    @Override
    public void create() {
        Path chosen = choose(messages.of("rescue.choose.new"));
        if (chosen != null) {
            show(
                    () -> {
                        String name = String.valueOf(chosen.getFileName());
                        Cellar empty = Cellar.empty(name, ZoneId.systemDefault());
                        CellarStore store = CellarStore.create(chosen, empty, clock, WRITTEN_BY);
                        recents.remember(chosen);
                        return new Door(store, clock, recents.paths());
                    },
                    this::say);
        }
    }

    @Override
    public void open() {
        Path chosen = choose(messages.of("rescue.choose.open"));
        if (chosen != null) {
            show(chosen);
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
        return known.stream()
                .filter(path -> shown == null || !isShown(path))
                .map(path -> new Recent(String.valueOf(path.getFileName()), path.toString()))
                .toList();
    }

    @Override
    public void reopen(Recent recent) {
        show(Path.of(recent.folder()));
    }

    /** Waits for what is still to be saved, then lets go of the folder. */
    @Override
    public void close() {
        doors.shutdown();
        if (shown != null) {
            shown.cellar().close();
        }
        try {
            doors.awaitTermination(LONGEST_LEAVE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
