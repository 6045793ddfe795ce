package undercroft;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Cursor;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import undercroft.app.Faults;
import undercroft.app.LastView;
import undercroft.cellar.Cellar;
import undercroft.command.WindowRequest;
import undercroft.quantity.InvalidInput;
import undercroft.session.BackgroundTasks;
import undercroft.session.OpenCellar;
import undercroft.session.WorkThreads;
import undercroft.store.CellarStore;
import undercroft.view.MainWindow;
import undercroft.view.StartWindow;
import undercroft.view.edit.EditorDialogs;
import undercroft.view.edit.FileQuestions;
import undercroft.view.kit.CellarChooser;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/**
 * Leads from one cellar to the next: all of the new one is read and built, in the background, before the one that is
 * shown is left. For the window's thread.
 */
final class CellarSwitch implements CellarChooser, AutoCloseable {
    private static final int LONGEST_LEAVE_SECONDS = 30;

    private final Stage stage;
    private final HostEnvironment host;
    private final FileQuestions questions;
    private Messages messages;
    private final Doors doors;
    private final OpenedBefore before;
    private final WindowPreferences preferences;
    private final Placement placement;
    private final ExecutorService disk = Executors.newSingleThreadExecutor(CellarSwitch::daemon);
    private final BackgroundTasks opening = new BackgroundTasks(disk, Platform::runLater);
    private WindowPreferences.Kept kept;
    private final UnforeseenFaults unforeseen;
    private boolean busy;
    private boolean onStartPage;
    private boolean warned;

    /** The cellar that is open; null while there is none. */
    private Shown shown;

    /** Where faults are said: above the cellar that is shown, or above the page on which one begins. */
    private Faults faults = new Faults();

    /** What is on the stage. Its faults and colours are its own, so that nothing which stays holds it once it is left. */
    private record Shown(OpenCellar cellar, Faults faults, BooleanProperty colours, MainWindow window, boolean demo) {}

    CellarSwitch(Stage stage, HostEnvironment host, Clock clock, FileQuestions questions) {
        this.questions = questions;
        this.stage = stage;
        this.host = host;
        this.doors = new Doors(host, clock);
        this.before = OpenedBefore.on(host);
        this.preferences = new WindowPreferences(host.settingsFolder());
        this.placement = new Placement(stage);
        this.unforeseen = new UnforeseenFaults(new TroubleLog(host.stateFolder(), clock), disk, Platform::runLater);
        this.kept = preferences.read();
        this.messages = kept.language().messages(host.locale());
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "undercroft-opening");
        thread.setDaemon(true);
        return thread;
    }

    /** Shows the window at once, and in it what was asked for as soon as it is read. */
    void begin(WindowRequest request) {
        request.language().ifPresent(asked -> messages = asked.messages(host.locale()));
        placement.begin(kept);
        stage.setScene(WaitingScene.of(messages, kept.dark()));
        stage.titleProperty().unbind();
        stage.setTitle(messages.of("app.name"));
        stage.setOnCloseRequest(this::mayClose);
        stage.show();
        opening.run(
                before::last,
                last -> {
                    Optional<Path> wanted = request.folder().or(() -> last);
                    if (request.demo()) {
                        demo();
                    } else if (wanted.isPresent()) {
                        show(wanted.get());
                    } else {
                        startPage();
                    }
                },
                this::say);
    }

    /** A cellar of the user's. One that another window has may be looked at, one that cannot be read may be restored. */
    void show(Path wanted) {
        if (isShown(wanted)) {
            shown.window().show(stage);
            stage.toFront();
            return;
        }
        show(false, before.remembering(wanted, () -> doors.open(wanted)), fault -> refused(wanted, fault));
    }

    private void look(Path wanted) {
        show(false, before.remembering(wanted, () -> doors.look(wanted)), this::say);
    }

    private boolean isShown(Path wanted) {
        return shown != null
                && shown.cellar().folder().equals(wanted.toAbsolutePath().normalize());
    }

    /** One at a time: a second click while a cellar is being read does nothing. */
    private void show(boolean demo, Callable<Doors.Door> way, Consumer<InvalidInput> whenRefused) {
        if (busy) {
            return;
        }
        setBusy(true);
        Faults its = new Faults();
        opening.run(
                () -> {
                    Doors.Door door = way.call();
                    WorkThreads threads = WorkThreads.answeringOn(Platform::runLater);
                    Optional<Path> settings = Optional.of(host.settingsFolder()).filter(folder -> !demo);
                    return OpenCellar.of(
                            door.store(), door.clock(), threads, settings, fault -> unforeseen.show(its, fault));
                },
                opened -> {
                    setBusy(false);
                    turnTo(opened, its, demo);
                },
                fault -> {
                    setBusy(false);
                    whenRefused.accept(fault);
                });
    }

    /** Says in one sentence what went wrong and should not have. Of any thread. */
    void tell(Throwable trouble) {
        unforeseen.tell(trouble, fault -> faults.show(fault));
    }

    private void setBusy(boolean isBusy) {
        busy = isBusy;
        stage.getScene().getRoot().setDisable(isBusy);
        stage.getScene().setCursor(isBusy ? Cursor.WAIT : Cursor.DEFAULT);
    }

    private void turnTo(OpenCellar cellar, Faults its, boolean demo) {
        Shown left = shown;
        // The window asks whether this is the demo while it is built.
        shown = new Shown(cellar, its, colours(), null, demo);
        boolean built = false;
        try {
            MainWindow window = window(shown);
            shown = new Shown(cellar, its, shown.colours(), window, demo);
            built = true;
        } finally {
            if (!built) {
                shown = left;
                leave(cellar);
            }
        }
        onStartPage = false;
        faults = its;
        shown.window().turnTo(left == null ? kept.view() : LastView.SHELF);
        shown.window().show(stage);
        cellar.workspace().faults().stream().findFirst().or(cellar::limitsFell).ifPresent(its::show);
        if (left != null) {
            leave(left.cellar());
        }
    }

    @Override
    public Language language() {
        return kept.language();
    }

    /** The cellar stays open as it is, undo and all; it gets another window. */
    @Override
    public void speak(Language language) {
        keep(kept.speaking(language));
        messages = language.messages(host.locale());
        if (onStartPage) {
            startPage();
        } else if (shown != null) {
            LastView view = shown.window().lastView();
            shown = new Shown(shown.cellar(), shown.faults(), colours(), null, shown.demo());
            shown = new Shown(shown.cellar(), shown.faults(), shown.colours(), window(shown), shown.demo());
            shown.window().turnTo(view);
            shown.window().show(stage);
        }
    }

    private MainWindow window(Shown of) {
        OpenCellar cellar = of.cellar();
        EditorDialogs editors = new EditorDialogs(messages, cellar, of.colours(), questions, () -> stage);
        return new MainWindow(new WindowContext(
                messages,
                cellar.workspace(),
                cellar.forecasts(),
                cellar.tasks(),
                of.faults(),
                editors,
                this,
                cellar.clock(),
                cellar.ticker().nowProperty(),
                cellar.sensors().stateProperty(),
                of.colours()));
    }

    private BooleanProperty colours() {
        BooleanProperty colours = new SimpleBooleanProperty(this, "dark", kept.dark());
        colours.addListener((property, before, after) -> keep(kept.withDark(after)));
        return colours;
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

    private void keep(WindowPreferences.Kept now) {
        kept = now;
        disk.execute(() -> preferences.keep(now));
    }

    private void refused(Path wanted, InvalidInput fault) {
        if (CellarStore.isOpenElsewhere(fault)) {
            say(fault, new Faults.Offer(messages.of("fault.open-elsewhere.look"), () -> look(wanted)));
            return;
        }
        Restoring restoring = new Restoring(messages, stage, wanted, fault, doors.clock());
        opening.run(
                restoring::read,
                versions -> {
                    if (versions.isEmpty()) {
                        say(fault);
                    } else {
                        Runnable ask = () -> restoring
                                .choose(versions, kept.dark())
                                .ifPresent(version ->
                                        opening.run(() -> restoring.restore(version), back -> show(wanted), this::say));
                        say(fault, new Faults.Offer(messages.of("fault.unreadable.restore"), ask));
                    }
                },
                unreadable -> say(fault));
    }

    private void say(InvalidInput fault) {
        beginSomewhere();
        faults.show(fault);
    }

    private void say(InvalidInput fault, Faults.Offer way) {
        beginSomewhere();
        faults.show(fault, way);
    }

    /** A fault before anything is shown is said above the page on which one begins. */
    private void beginSomewhere() {
        if (shown == null && !onStartPage) {
            startPage();
        }
    }

    @Override
    public void startPage() {
        onStartPage = true;
        faults = new Faults();
        new StartWindow(messages, this, faults, ZoneId.systemDefault(), host.documents(), opening, colours())
                .show(stage);
    }

    @Override
    public Optional<Runnable> back() {
        return Optional.ofNullable(shown).map(cellar -> () -> {
            onStartPage = false;
            faults = cellar.faults();
            cellar.colours().set(kept.dark());
            cellar.window().show(stage);
        });
    }

    @Override
    public void create(Cellar cellar, Path folder) {
        show(false, before.remembering(folder, () -> doors.create(cellar, folder)), this::say);
    }

    @Override
    public void demo() {
        show(true, doors::demo, this::say);
    }

    @Override
    public boolean isDemo() {
        return shown != null && shown.demo();
    }

    @Override
    public Optional<Path> askFolder(String title, Path begin) {
        return questions.folder(stage, title, begin);
    }

    @Override
    public void open() {
        questions.folder(stage, messages.of("start.folder.choose"), host.home()).ifPresent(this::show);
    }

    @Override
    public void openAgain() {
        Path wanted = shown.cellar().folder();
        show(false, () -> doors.open(wanted), this::say);
    }

    @Override
    public void saveElsewhere() {
        OpenCellar cellar = shown.cellar();
        questions
                .folder(stage, messages.of("fault.save.choose"), host.home())
                .ifPresent(folder -> opening.run(
                        () -> {
                            cellar.workspace().saveElsewhere(folder);
                            return folder;
                        },
                        this::show,
                        this::say));
    }

    @Override
    public List<Recent> recent() {
        return before.all().stream()
                .filter(path -> !isShown(path))
                .map(path -> new Recent(String.valueOf(path.getFileName()), path.toString()))
                .toList();
    }

    @Override
    public void reopen(Recent recent) {
        show(Path.of(recent.folder()));
    }

    /** A change that is on no disk is not left without a word; who closes the window a second time means it. */
    private void mayClose(WindowEvent request) {
        InvalidInput unsaved = shown == null
                ? null
                : shown.cellar().workspace().saveFaultProperty().get();
        if (unsaved != null && !warned) {
            warned = true;
            request.consume();
            back().ifPresent(Runnable::run);
            say(
                    new InvalidInput("", "fault.save.closing", messages.fault(unsaved)),
                    new Faults.Offer(messages.of("fault.save.elsewhere"), this::saveElsewhere));
        }
    }

    /** Waits for what is still to be saved, then lets go of the folder. */
    @Override
    public void close() {
        WindowPreferences.Kept last = placement.of(kept);
        preferences.keep(shown == null ? last : last.withView(shown.window().lastView()));
        disk.shutdown();
        if (shown != null) {
            shown.cellar().close();
        }
        try {
            disk.awaitTermination(LONGEST_LEAVE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
