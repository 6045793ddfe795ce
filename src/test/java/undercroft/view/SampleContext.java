package undercroft.view;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.stage.Stage;
import undercroft.app.Faults;
import undercroft.cellar.Cellar;
import undercroft.demo.DemoShelf;
import undercroft.outlook.OutlookSamples;
import undercroft.outlook.Outlooks;
import undercroft.session.BackgroundTasks;
import undercroft.session.Forecasts;
import undercroft.session.SampleWorkspace;
import undercroft.session.Sensors;
import undercroft.session.Workspace;
import undercroft.view.kit.CellarChooser;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/** A window's parts over the sample shelf: nothing on disk, all at once, each outlook asked for noted. */
final class SampleContext {
    final List<Instant> asked = new ArrayList<>();
    final NoEditors editors = new NoEditors();
    final ObjectProperty<Instant> now;
    final WindowContext context;

    SampleContext(Cellar cellar) {
        this(
                Messages.english(),
                SampleWorkspace.of(cellar),
                (shown, temperatures, at) -> OutlookSamples.outlook(shown, at),
                OutlookSamples.NOW);
    }

    /** The demo at the moment at which it begins, its own temperatures and forecasts in it. */
    static SampleContext ofTheDemo(Messages messages) {
        Workspace demo = SampleWorkspace.of(DemoShelf.cellar(), DemoShelf.temperatures());
        return new SampleContext(messages, demo, Outlooks::of, DemoShelf.NOW);
    }

    private SampleContext(Messages messages, Workspace workspace, Forecasts.Calculator outlooks, Instant begun) {
        BackgroundTasks atOnce = new BackgroundTasks(Runnable::run, Runnable::run);
        now = new SimpleObjectProperty<>(begun);
        Clock clock = Clock.fixed(begun, ZoneOffset.UTC);
        Faults faults = new Faults();
        Forecasts forecasts = new Forecasts(
                workspace,
                (shown, temperatures, at) -> {
                    asked.add(at);
                    return outlooks.outlook(shown, temperatures, at);
                },
                atOnce,
                clock,
                faults::show);
        forecasts.refresh();
        context = new WindowContext(
                messages,
                workspace,
                forecasts,
                atOnce,
                faults,
                editors,
                new NoChooser(),
                clock,
                now,
                new SimpleObjectProperty<>(Sensors.State.NOTHING),
                new SimpleBooleanProperty(false));
    }

    /** The whole of the test screen, wherever the test before left the stage: it cannot draw a window that is partly outside. */
    static void fill(Stage stage) {
        stage.setX(0);
        stage.setY(0);
        stage.setWidth(1280);
        stage.setHeight(800);
    }

    private static final class NoChooser implements CellarChooser {
        @Override
        public Language language() {
            return Language.SYSTEM;
        }

        @Override
        public void speak(Language language) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void startPage() {}

        @Override
        public void create(Cellar cellar, Path folder) {}

        @Override
        public Optional<Path> askFolder(String title, Path begin) {
            return Optional.empty();
        }

        @Override
        public void open() {}

        @Override
        public void demo() {}

        @Override
        public boolean isDemo() {
            return false;
        }

        @Override
        public void openAgain() {}

        @Override
        public Optional<Runnable> back() {
            return Optional.empty();
        }

        @Override
        public void saveElsewhere() {}

        @Override
        public List<Recent> recent() {
            return List.of(new Recent("Other cellar", "/home/me/other"));
        }

        @Override
        public void reopen(Recent recent) {}
    }
}
