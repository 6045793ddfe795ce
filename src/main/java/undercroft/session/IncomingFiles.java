package undercroft.session;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Cellar;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.Incoming;
import undercroft.store.json.ReadingsFile;

/**
 * Takes in what other programs put into a cellar's {@code incoming} folder. A file is moved away only when its samples are
 * on the disk, so a program that dies in between takes it in once more, which changes nothing.
 */
public final class IncomingFiles {
    private IncomingFiles() {}

    /**
     * What was taken in.
     *
     * @param celsius what came, by the id of its place, in the order it came
     * @param readings what the cellar does not have yet, each in its file still
     * @param faults files that could not be taken in; they lie in {@code incoming/refused}, or wait on where the disk failed
     */
    public record Taken(List<Samples> celsius, List<Readings> readings, List<InvalidInput> faults) {
        public Taken {
            celsius = List.copyOf(celsius);
            readings = List.copyOf(readings);
            faults = List.copyOf(faults);
        }

        public boolean isNothing() {
            return celsius.isEmpty() && readings.isEmpty() && faults.isEmpty();
        }
    }

    /** Samples for a place. */
    public record Samples(String placeId, TimeSeries celsius) {}

    /** Readings of a batch, and the file that goes when they are saved. */
    public record Readings(Incoming.Waiting waiting, ReadingsFile file) {}

    /**
     * Takes in the temperatures that wait and reads the readings, which are for the caller to put into the cellar: save it,
     * then call {@link #settle}. A place that was guessed has its log as its source from then on. Blocks on a disk. Where it
     * fails, what is left waits for the next time. A store that is only looked at takes nothing in.
     */
    public static Taken takeIn(CellarStore store) {
        List<Samples> all = new ArrayList<>();
        List<Readings> readings = new ArrayList<>();
        List<InvalidInput> faults = new ArrayList<>();
        if (store.lookOnly().isEmpty()) {
            Incoming incoming = store.incoming();
            try {
                temperatures(incoming, store, all, faults);
                readings(incoming, store.cellar(), readings, faults);
            } catch (InvalidInput failure) {
                faults.add(failure);
            }
        }
        return new Taken(all, readings, faults);
    }

    private static void temperatures(
            Incoming incoming, CellarStore store, List<Samples> all, List<InvalidInput> faults) {
        Cellar cellar = store.cellar();
        for (Incoming.Waiting waiting : incoming.waiting(cellar)) {
            TimeSeries celsius;
            try {
                celsius = incoming.celsius(waiting, cellar.zone());
            } catch (InvalidInput unreadable) {
                faults.add(refused(incoming, waiting, unreadable));
                continue;
            }
            store.merge(waiting.kind(), celsius);
            Samples samples = new Samples(waiting.kind(), celsius);
            all.add(samples);
            // Before the file is moved: a program that dies in between does both again.
            saveSource(store, samples);
            incoming.done(waiting);
        }
    }

    /** A file that the disk did not give out this time may be sound: it waits on. */
    private static InvalidInput refused(Incoming incoming, Incoming.Waiting waiting, InvalidInput why) {
        if (why.getCause() instanceof IOException failure && !(failure instanceof AccessDeniedException)) {
            return why;
        }
        incoming.refused(waiting);
        boolean named = why.where().isEmpty() || why.where().startsWith(waiting.name());
        String inside = named ? "" : ": " + why.where();
        return new InvalidInput(waiting.name() + inside, "incoming.fault.refused", why);
    }

    private static void readings(Incoming incoming, Cellar cellar, List<Readings> all, List<InvalidInput> faults) {
        for (Incoming.Waiting waiting : incoming.waitingReadings()) {
            try {
                ReadingsFile file = incoming.readings(waiting);
                file.into(cellar);
                all.add(new Readings(waiting, file));
            } catch (InvalidInput unreadable) {
                faults.add(refused(incoming, waiting, unreadable));
            }
        }
    }

    /** Moves readings away that a store has saved; the others wait on. Blocks on a disk. */
    public static void settle(CellarStore store, List<Readings> readings) {
        Incoming incoming = store.incoming();
        Cellar saved = store.cellar();
        for (Readings one : readings) {
            if (one.file().whereKnown(saved).equals(saved)) {
                incoming.done(one.waiting());
            }
        }
    }

    /** The same without a window. */
    public static Taken takeInAlone(CellarStore store) {
        Taken taken = takeIn(store);
        Cellar cellar = store.cellar();
        for (Readings readings : taken.readings()) {
            cellar = readings.file().into(cellar);
        }
        store.save(cellar);
        settle(store, taken.readings());
        return taken;
    }

    /** Samples that did not come in a file. Blocks on a disk. */
    public static void takeInAlone(CellarStore store, String placeId, TimeSeries celsius) {
        boolean isThere =
                store.cellar().places().stream().anyMatch(place -> place.id().equals(placeId));
        if (isThere && !celsius.isEmpty()) {
            store.merge(placeId, celsius);
            saveSource(store, new Samples(placeId, celsius));
        }
    }

    /** Where nothing changes nothing is saved: what another thread saves meanwhile must not be put back. */
    private static void saveSource(CellarStore store, Samples samples) {
        Cellar saved = store.cellar();
        Cellar sourced = withSource(saved, samples);
        if (!sourced.equals(saved)) {
            store.save(sourced);
        }
    }

    static Cellar withSource(Cellar cellar, Samples samples) {
        boolean guessed = !(cellar.place(samples.placeId()).temperature() instanceof TemperatureSource.Logged);
        return guessed && !samples.celsius().isEmpty()
                ? cellar.withPlace(cellar.place(samples.placeId()).withTemperature(new TemperatureSource.Logged()))
                : cellar;
    }
}
