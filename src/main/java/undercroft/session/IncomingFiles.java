package undercroft.session;

import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Cellar;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.Incoming;

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
     * @param faults files that could not be taken in; they lie in {@code incoming/refused}
     */
    public record Taken(List<Samples> celsius, List<InvalidInput> faults) {
        public Taken {
            celsius = List.copyOf(celsius);
            faults = List.copyOf(faults);
        }

        public boolean isNothing() {
            return celsius.isEmpty() && faults.isEmpty();
        }
    }

    /** Samples for a place. */
    public record Samples(String placeId, TimeSeries celsius) {}

    /** Takes all in that waits. Blocks on a disk. A store that is only looked at takes nothing in. */
    public static Taken takeIn(CellarStore store) {
        List<Samples> all = new ArrayList<>();
        List<InvalidInput> faults = new ArrayList<>();
        if (store.lookOnly().isPresent()) {
            return new Taken(all, faults);
        }
        Incoming incoming = Incoming.of(store.folder());
        Cellar cellar = store.cellar();
        for (Incoming.Waiting waiting : incoming.waiting(cellar)) {
            TimeSeries celsius;
            try {
                celsius = incoming.celsius(waiting, cellar.zone());
            } catch (InvalidInput unreadable) {
                incoming.refused(waiting);
                faults.add(new InvalidInput(waiting.name(), "incoming.fault.refused", unreadable));
                continue;
            }
            store.merge(waiting.placeId(), celsius);
            incoming.done(waiting);
            all.add(new Samples(waiting.placeId(), celsius));
        }
        return new Taken(all, faults);
    }

    /** The same without a window: a place that was guessed has its log as its source from then on. */
    public static Taken takeInAlone(CellarStore store) {
        Taken taken = takeIn(store);
        Cellar cellar = store.cellar();
        for (Samples samples : taken.celsius()) {
            cellar = withSource(cellar, samples);
        }
        store.save(cellar);
        return taken;
    }

    static Cellar withSource(Cellar cellar, Samples samples) {
        boolean guessed = !(cellar.place(samples.placeId()).temperature() instanceof TemperatureSource.Logged);
        return guessed && !samples.celsius().isEmpty()
                ? cellar.withPlace(cellar.place(samples.placeId()).withTemperature(new TemperatureSource.Logged()))
                : cellar;
    }
}
