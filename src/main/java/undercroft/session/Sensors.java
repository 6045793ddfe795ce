package undercroft.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.cellar.Cellar;
import undercroft.listen.Listener;
import undercroft.listen.SensorState;
import undercroft.quantity.InvalidInput;
import undercroft.store.Broker;
import undercroft.store.CellarStore;
import undercroft.store.Incoming;

/**
 * The live sensors of an open cellar. They are heard while a place has one and the user's settings name a broker; what
 * they bring goes to the disk as what lies in {@code incoming} does, and is answered and shown after that. For the window's
 * thread, on which nothing here waits.
 */
public final class Sensors implements BrokerChoice, AutoCloseable {
    private static final Duration LOOK_EVERY = Duration.ofSeconds(1);

    /** How it stands with the broker and each place's sensor. */
    public record State(
            boolean brokerNamed,
            Optional<InvalidInput> brokerFault,
            Map<String, SensorState> places,
            List<InvalidInput> gauges) {
        /** Before a broker was asked for, and where none is. */
        public static final State NOTHING = new State(false, Optional.empty(), Map.of(), List.of());

        public State {
            places = Map.copyOf(places);
            gauges = List.copyOf(gauges);
        }

        private List<InvalidInput> faults() {
            List<InvalidInput> all = new ArrayList<>(brokerFault.stream().toList());
            places.values().forEach(place -> all.addAll(place.faults()));
            all.addAll(gauges);
            return all;
        }
    }

    private final Optional<Path> settings;
    private final CellarStore store;
    private final Workspace workspace;
    private final Clock clock;
    private final WorkThreads threads;
    private final BackgroundTasks tasks;
    private final Consumer<IncomingFiles.Samples> show;
    private final Consumer<InvalidInput> whenFaulty;
    private final LiveGauges gauges = new LiveGauges();
    private final AtomicBoolean saving = new AtomicBoolean();
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(this, "state", State.NOTHING);
    private Set<String> told = Set.of();
    private boolean connecting;
    private Beat.Running running = () -> {};
    private volatile Listener listener;
    private volatile boolean closed;

    /**
     * Begins to listen where there is something to hear.
     *
     * @param settings the user's settings folder; without one nothing is heard
     * @param show told what was saved, on the window's thread
     */
    Sensors(
            Optional<Path> settings,
            CellarStore store,
            Workspace workspace,
            Clock clock,
            WorkThreads threads,
            Consumer<IncomingFiles.Samples> show,
            Consumer<InvalidInput> whenFaulty) {
        this.settings = workspace.lookOnly().isPresent() ? Optional.empty() : settings;
        this.store = store;
        this.workspace = workspace;
        this.clock = clock;
        this.threads = threads;
        this.tasks = threads.forCalculating();
        this.show = show;
        this.whenFaulty = whenFaulty;
        workspace.stateProperty().addListener((property, before, after) -> {
            if (!before.cellar().places().equals(after.cellar().places())
                    || !before.cellar().batches().equals(after.cellar().batches())) {
                follow();
            }
        });
        follow();
    }

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    @Override
    public void broker(Consumer<Optional<Broker>> whenRead, Consumer<InvalidInput> whenUnreadable) {
        tasks.run(() -> settings.flatMap(Broker::in), whenRead, whenUnreadable);
    }

    @Override
    public boolean mayListen() {
        return settings.isPresent();
    }

    @Override
    public void turnTo(Optional<Broker> broker) {
        settings.ifPresent(folder -> tasks.run(
                () -> {
                    broker.ifPresentOrElse(named -> named.keepIn(folder), () -> Broker.forgetIn(folder));
                    return folder;
                },
                kept -> {
                    leave();
                    follow();
                },
                whenFaulty));
    }

    /** Follows what the places have now. The broker's settings are read and the line is opened in the background. */
    private void follow() {
        Cellar cellar = workspace.getCellar();
        boolean wanted = Listener.isWanted(cellar);
        if (closed || settings.isEmpty() || (!wanted && listener == null)) {
            return;
        }
        Listener now = listener;
        if (now != null) {
            tasks.run(
                    () -> {
                        now.follow(cellar);
                        return now;
                    },
                    following -> {},
                    whenFaulty);
        } else if (!connecting) {
            connecting = true;
            tasks.run(
                    () -> settings.flatMap(Broker::in).map(broker -> new Listener(broker, clock)), this::met, fault -> {
                        connecting = false;
                        whenFaulty.accept(fault);
                    });
        }
    }

    private void met(Optional<Listener> made) {
        connecting = false;
        if (closed) {
            made.ifPresent(Listener::close);
            return;
        }
        listener = made.orElse(null);
        if (listener != null) {
            running = threads.beat().every(LOOK_EVERY, this::look);
            follow();
        }
    }

    /** Once a second, on the thread of the clock: what is due is saved in the background, how it stands is shown. */
    private void look() {
        Listener now = listener;
        if (closed || now == null) {
            return;
        }
        if (now.isDue() && saving.compareAndSet(false, true)) {
            threads.forSaving().run(() -> saved(now.flush()), this::shown, fault -> {
                saving.set(false);
                whenFaulty.accept(fault);
            });
        }
        State seen = new State(true, now.brokerFault(), now.states(), now.gaugeFaults());
        threads.window().execute(() -> stands(now, seen));
    }

    /** What is heard goes to the disk, in line with other changes, before anybody is told that it did. */
    private List<IncomingFiles.Samples> saved(Listener.Flush heard) {
        List<IncomingFiles.Samples> all = new ArrayList<>();
        heard.celsius().forEach((placeId, celsius) -> {
            IncomingFiles.takeInAlone(store, placeId, celsius);
            all.add(new IncomingFiles.Samples(placeId, celsius));
        });
        gauges.drop(Incoming.of(store.folder()), store.cellar(), heard.bars(), clock.instant());
        heard.kept();
        return all;
    }

    private void shown(List<IncomingFiles.Samples> samples) {
        saving.set(false);
        Set<String> there = new HashSet<>();
        workspace.getCellar().places().forEach(place -> there.add(place.id()));
        samples.stream().filter(each -> there.contains(each.placeId())).forEach(show);
    }

    private void stands(Listener of, State seen) {
        if (closed || of != listener) {
            return;
        }
        state.set(seen);
        Set<String> before = told;
        Set<String> standing = new HashSet<>();
        for (InvalidInput fault : seen.faults()) {
            String what = fault.where() + "/" + fault.key();
            if (standing.add(what) && !before.contains(what)) {
                whenFaulty.accept(fault);
            }
        }
        told = standing;
    }

    private void leave() {
        Stream.ofNullable(listener).forEach(Listener::close);
        listener = null;
        running.close();
        told = Set.of();
        state.set(State.NOTHING);
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            Listener last = listener;
            if (last != null) {
                threads.forSaving().run(() -> saved(last.lastFlush()), saved -> {}, whenFaulty);
            }
            leave();
        }
    }
}
