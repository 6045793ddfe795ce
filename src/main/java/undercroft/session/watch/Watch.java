package undercroft.session.watch;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import undercroft.cellar.Cellar;
import undercroft.listen.Listener;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.report.Acts;
import undercroft.series.TimeSeries;
import undercroft.session.IncomingFiles;
import undercroft.session.LiveGauges;
import undercroft.store.Broker;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.store.Incoming;
import undercroft.store.LoggedTemperatures;
import undercroft.store.logger.ImportMerge;
import undercroft.wording.Headlines;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/**
 * Looks after a cellar without a window: takes in what the followed files and {@code incoming} bring, tells each batch that
 * wants something done at once, and publishes the shelf. It holds the lock only while it saves; while somebody else has the
 * cellar open, what came in is put into {@code incoming} for them. What goes wrong is told once and tried again; nothing
 * that came in is let go before it is on a disk.
 */
public final class Watch implements AutoCloseable {
    /** How often {@link #round} should be called. */
    public static final Duration STEP = Duration.ofMinutes(1);

    private static final Duration SHELF_EVERY = Duration.ofMinutes(10);
    private static final String WRITTEN_BY = "undercroft watch";

    private final Path folder;
    private final Optional<Published> published;
    private final Clock clock;
    private final Messages messages;
    private final Consumer<String> says;
    private final Told told;
    private final Pending pending = new Pending();
    private final GrowingLogs logs;
    private final Optional<Listener> listener;
    private final LiveGauges gauges = new LiveGauges();
    private final ShelfMemory memory = new ShelfMemory();
    private Acts acts;
    private Instant nextShelf;

    /**
     * Nothing is done before the first {@link #round}.
     *
     * @param publish the folder to publish into
     * @param broker where live sensors are heard
     * @param says told what a person should know of the shelf
     * @param complains told what goes wrong
     * @throws InvalidInput when there is no cellar in the folder
     */
    public Watch(
            Path folder,
            Optional<Path> publish,
            Optional<Broker> broker,
            Clock clock,
            Messages messages,
            Consumer<String> says,
            Consumer<String> complains) {
        this(folder, publish, Export.ofTexts(), broker, clock, messages, says, complains);
    }

    Watch(
            Path folder,
            Optional<Path> publish,
            Export export,
            Optional<Broker> broker,
            Clock clock,
            Messages messages,
            Consumer<String> says,
            Consumer<String> complains) {
        CellarStore.read(folder);
        this.folder = folder;
        this.published = publish.map(page -> new Published(page, export));
        this.clock = clock;
        this.messages = messages;
        this.says = says;
        this.told = new Told(messages, complains);
        this.logs = new GrowingLogs(pending, told);
        Instant now = clock.instant();
        this.acts = published.flatMap(page -> page.told(now)).orElseGet(() -> Acts.none(now));
        this.nextShelf = now;
        this.listener = broker.map(there -> new Listener(there, clock));
    }

    /** Whether sensors have brought something that should not wait for the next {@link #round}: then call {@link #save}. */
    public boolean isDue() {
        return listener.filter(Listener::isDue).isPresent();
    }

    /** One look at everything. Blocks on a disk. */
    public void round() {
        told.attempt("read", () -> {
            Cellar cellar = CellarStore.read(folder);
            logs.look(cellar);
            listener.ifPresent(live -> live.follow(cellar));
        });
        save();
        listener.ifPresent(live -> told.standing("listen", live.faults()));
        Instant now = clock.instant();
        if (!now.isBefore(nextShelf)) {
            nextShelf = now.plus(SHELF_EVERY);
            told.attempt("shelf", () -> shelf(now));
        }
    }

    /** Saves what came in. Blocks on a disk. */
    public void save() {
        save(Listener::flush);
    }

    private void save(Function<Listener, Listener.Flush> hearing) {
        told.attempt("save", () -> {
            Map<String, TimeSeries> samples = pending.take();
            Optional<Listener.Flush> heard = listener.map(hearing);
            boolean saved = false;
            try {
                Map<String, TimeSeries> all = new HashMap<>(samples);
                heard.ifPresent(live ->
                        live.celsius().forEach((id, celsius) -> all.merge(id, celsius, TimeSeries::mergedWith)));
                heard.ifPresent(live ->
                        gauges.drop(Incoming.of(folder), CellarStore.read(folder), live.bars(), clock.instant()));
                keep(all);
                saved = true;
            } finally {
                if (!saved) {
                    samples.forEach(pending::add);
                }
            }
            heard.ifPresent(Listener.Flush::kept);
        });
    }

    private void keep(Map<String, TimeSeries> samples) {
        Incoming incoming = Incoming.of(folder);
        boolean waits = incoming.isAnythingWaiting(CellarStore.read(folder));
        if (samples.isEmpty() && !waits) {
            return;
        }
        try (CellarStore store = CellarStore.openInPassing(folder, clock, WRITTEN_BY)) {
            IncomingFiles.Taken taken = IncomingFiles.takeInAlone(store);
            taken.faults().forEach(told::once);
            samples.forEach((placeId, celsius) -> IncomingFiles.takeInAlone(store, placeId, celsius));
        } catch (InvalidInput fault) {
            if (!CellarStore.isOpenElsewhere(fault)) {
                throw fault;
            }
            leave(incoming, samples);
        }
    }

    /** For whoever has the cellar open; what is logged already need not be told them again. */
    private void leave(Incoming incoming, Map<String, TimeSeries> samples) {
        Map<String, TimeSeries> known =
                CellarStore.temperatures(folder, CellarStore.read(folder)).celsius();
        samples.forEach((placeId, celsius) -> {
            if (!ImportMerge.of(known.getOrDefault(placeId, TimeSeries.empty()), celsius)
                    .changesNothing()) {
                incoming.drop(placeId, celsius, clock.instant());
            }
        });
    }

    private void shelf(Instant now) {
        Cellar cellar = CellarStore.read(folder);
        LoggedTemperatures logged = CellarStore.temperatures(folder, cellar);
        CellarOutlook outlook =
                Outlooks.of(cellar, logged.celsius(), now, List.of(), memory).telling(logged.faults());
        ShelfWords words = ShelfWords.of(outlook, messages);
        Acts before = acts;
        acts = acts.after(outlook);
        for (BatchOutlook batch : acts.newSince(before, outlook)) {
            says.accept(messages.of(
                    "watch.act", words.dayAndTime(now), batch.batch().name(), new Headlines(words).of(batch)));
        }
        listener.ifPresent(live -> live.leftOut().forEach(line -> says.accept(messages.of(line))));
        published.ifPresent(page -> told.attempt(
                "publish", () -> page.write(words, Outlooks.courses(cellar, logged.celsius(), outlook, memory), acts)));
    }

    /** What came in last is saved too. */
    @Override
    public void close() {
        save(Listener::lastFlush);
        logs.close();
        listener.ifPresent(Listener::close);
    }
}
