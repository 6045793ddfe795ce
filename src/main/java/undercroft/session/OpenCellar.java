package undercroft.session;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.logger.ImportMerge;

/**
 * A cellar that is open: its workspace, forecasts, followed logs, live sensors and clock, and all they listen to. What it opened it
 * closes, so that a program can go from one cellar to the next and keep nothing of the one before.
 */
public final class OpenCellar implements AutoCloseable {
    private final CellarStore store;
    private final WorkThreads threads;
    private final Clock clock;
    private final Workspace workspace;
    private final BackgroundTasks tasks;
    private final Forecasts forecasts;
    private final FollowedLogs followed;
    private final Sensors sensors;
    private final Ticker ticker;
    private boolean ended;
    private boolean closed;

    private OpenCellar(
            CellarStore store,
            Clock clock,
            WorkThreads threads,
            Optional<Path> settings,
            Consumer<InvalidInput> whenFaulty) {
        this.store = store;
        this.threads = threads;
        this.clock = clock;
        this.tasks = threads.forCalculating();
        this.workspace = new Workspace(new FolderRepository(store), threads.forSaving(), store.lookOnly());
        this.forecasts = new Forecasts(workspace, new OnlyWhatChanged(), tasks, clock, whenFaulty);
        this.followed = new FollowedLogs(workspace, tasks, threads.window(), whenFaulty);
        this.sensors = new Sensors(
                settings, store, workspace, clock, threads, samples -> show(samples, whenFaulty), whenFaulty);
        this.ticker = new Ticker(clock, threads.beat(), threads.window());
        ticker.nowProperty().addListener((property, before, after) -> {
            takeIn(whenFaulty);
            forecasts.refresh();
        });
        takeIn(whenFaulty);
    }

    /**
     * Reads all that is in an open store and takes it over: it is closed with the cellar, and at once when it cannot be
     * read. Blocks on a disk; nothing of the window may wait for it.
     *
     * @param clock what the cellar takes for now; the demo stands still in the past
     * @param settings the user's settings folder, where a broker of live sensors may be named; without it none is heard
     * @param whenFaulty called on the window's thread with what a person should know
     */
    public static OpenCellar of(
            CellarStore store,
            Clock clock,
            WorkThreads threads,
            Optional<Path> settings,
            Consumer<InvalidInput> whenFaulty) {
        OpenCellar opened = null;
        try {
            opened = new OpenCellar(store, clock, threads, settings, whenFaulty);
            return opened;
        } finally {
            if (opened == null) {
                threads.end();
                store.close();
            }
        }
    }

    /** What waits in {@code incoming} goes to the disk first, then into what is shown. */
    private void takeIn(Consumer<InvalidInput> whenFaulty) {
        if (workspace.lookOnly().isPresent()) {
            return;
        }
        tasks.run(
                () -> IncomingFiles.takeIn(store),
                taken -> {
                    taken.celsius().forEach(samples -> show(samples, whenFaulty));
                    show(taken.readings(), whenFaulty);
                    taken.faults().forEach(whenFaulty);
                },
                whenFaulty);
    }

    /** Nobody read them here, so undo does not take them back. Their files go when they are saved. */
    private void show(List<IncomingFiles.Readings> readings, Consumer<InvalidInput> whenFaulty) {
        if (ended || readings.isEmpty()) {
            return;
        }
        readings.forEach(one -> workspace.changeThroughout(one.file()::whereKnown));
        threads.forSaving()
                .run(
                        () -> {
                            IncomingFiles.settle(store, readings);
                            return readings;
                        },
                        settled -> {},
                        whenFaulty);
    }

    private void show(IncomingFiles.Samples samples, Consumer<InvalidInput> whenFaulty) {
        if (ended) {
            return;
        }
        TimeSeries known = workspace.getState().temperatures().getOrDefault(samples.placeId(), TimeSeries.empty());
        tasks.run(
                () -> ImportMerge.of(known, samples.celsius()),
                merge -> {
                    if (!merge.changesNothing() && !workspace.takeIn(samples.placeId(), known, merge.series())) {
                        show(samples, whenFaulty);
                    }
                    Cellar shown = workspace.getCellar();
                    Cellar sourced = IncomingFiles.withSource(shown, samples);
                    if (!sourced.equals(shown)) {
                        workspace.changeThroughout(cellar -> IncomingFiles.withSource(cellar, samples));
                    }
                },
                whenFaulty);
    }

    public Path folder() {
        return store.folder();
    }

    public Clock clock() {
        return clock;
    }

    public Workspace workspace() {
        return workspace;
    }

    public Forecasts forecasts() {
        return forecasts;
    }

    /** Where its files are read and its sums are done. */
    public BackgroundTasks tasks() {
        return tasks;
    }

    public Sensors sensors() {
        return sensors;
    }

    public Ticker ticker() {
        return ticker;
    }

    /**
     * What to say once to a cellar of an earlier version, which knew less of what can make a bottle stronger: why its
     * heat limits fell, and what raises them where the beer was finished.
     */
    public Optional<InvalidInput> limitsFell() {
        long batches = workspace.getCellar().batches().stream()
                .filter(batch -> batch.leftAt(clock.instant()) > 0)
                .count();
        return store.isOfEarlierVersion() && batches > 0
                ? Optional.of(new InvalidInput("", "store.limits-fell", batches))
                : Optional.empty();
    }

    /** Why nothing can be changed, where that is so. */
    public Optional<InvalidInput> lookOnly() {
        return workspace.lookOnly();
    }

    /** The beginning of closing, which waits for nothing: the clock stops, no file is followed, no forecast is made. For the window's thread. */
    public void end() {
        if (!ended) {
            ended = true;
            ticker.close();
            forecasts.close();
            followed.close();
            sensors.close();
            threads.end();
        }
    }

    /**
     * Waits for what is still to be saved, then lets go of the folder.
     *
     * @throws InvalidInput when the newest change may not be on the disk
     */
    @Override
    public void close() {
        end();
        if (closed) {
            return;
        }
        closed = true;
        try {
            threads.awaitSaved();
        } catch (TimeoutException late) {
            throw new InvalidInput("", "rescue.fault.late", String.valueOf(late.getMessage()));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            store.close();
        }
    }
}
