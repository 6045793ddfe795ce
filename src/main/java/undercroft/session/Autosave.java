package undercroft.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.Workspace.State;

/**
 * Keeps the disk equal to the newest state. What is on the disk is known here, and each save writes whatever differs from
 * it: a part that could not be saved is tried again with the next change, and whenever somebody asks, until it is there.
 * The cellar and the log of each place are saved one by one; where one fails the others are still saved.
 */
final class Autosave {
    private final CellarRepository repository;
    private final BackgroundTasks saving;
    private final BiConsumer<String, TimeSeries> whenOthersWrote;
    private final ReadOnlyObjectWrapper<InvalidInput> fault = new ReadOnlyObjectWrapper<>(this, "fault");

    /** Set on the window's thread, read where it is saved. */
    private volatile State newest;

    /** The newest state that was saved as a whole. */
    private volatile State saved;

    /** What is on the disk, part by part; only the saving thread looks at it. */
    private Cellar cellarOnDisk;

    private final Map<String, TimeSeries> logsOnDisk;

    /**
     * @param saving runs its work one after the other
     * @param onDisk what was read
     * @param whenOthersWrote is told, on the window's thread, the samples another program put into the log of a place
     */
    Autosave(
            CellarRepository repository,
            BackgroundTasks saving,
            State onDisk,
            BiConsumer<String, TimeSeries> whenOthersWrote) {
        this.repository = repository;
        this.saving = saving;
        this.whenOthersWrote = whenOthersWrote;
        this.newest = onDisk;
        this.saved = onDisk;
        this.cellarOnDisk = onDisk.cellar();
        this.logsOnDisk = new HashMap<>(onDisk.temperatures());
    }

    /** Why the newest state is not on disk; null while it is, or may yet be. */
    ReadOnlyObjectProperty<InvalidInput> faultProperty() {
        return fault.getReadOnlyProperty();
    }

    /** Whether anything is not on the disk, be it that it waits or that it failed. May be asked from any thread. */
    @SuppressWarnings("ReferenceEquality")
    boolean hasUnsaved() {
        return saved != newest;
    }

    void save(State state) {
        newest = state;
        saveAgain();
    }

    /** Saves what is not saved yet. */
    void saveAgain() {
        saving.run(
                this::saveDifference,
                outcome -> {
                    fault.set(outcome.fault());
                    outcome.others().forEach(whenOthersWrote);
                },
                fault::set);
    }

    /** Writes all as a cellar of its own into another folder; the one that is open stays as it is. */
    void saveElsewhere(Path folder) {
        State state = newest;
        repository.saveElsewhere(folder, state.cellar(), state.temperatures());
    }

    /**
     * What came of a save.
     *
     * @param others what others wrote in the meantime, by place
     * @param fault null when all is on the disk
     */
    private record Outcome(Map<String, TimeSeries> others, InvalidInput fault) {}

    private Outcome saveDifference() {
        State wanted = newest;
        List<InvalidInput> faults = new ArrayList<>();
        if (!wanted.cellar().equals(cellarOnDisk)) {
            attempt(faults, () -> {
                repository.save(wanted.cellar());
                cellarOnDisk = wanted.cellar();
            });
        }
        Map<String, TimeSeries> others = new HashMap<>();
        wantedLogs(wanted).forEach((placeId, celsius) -> {
            if (!celsius.equals(logsOnDisk.get(placeId))) {
                attempt(faults, () -> {
                    TimeSeries added = repository.saveTemperatures(placeId, celsius);
                    logsOnDisk.put(placeId, celsius);
                    if (!added.isEmpty()) {
                        others.put(placeId, added);
                    }
                });
            }
        });
        if (!faults.isEmpty()) {
            return new Outcome(others, faults.get(0));
        }
        saved = wanted;
        return new Outcome(others, null);
    }

    /**
     * The logs of the places there are; an empty one where there was one before. The log of a place that went stays on
     * disk: it may be the only copy, and undo brings the place back.
     */
    private Map<String, TimeSeries> wantedLogs(State wanted) {
        Set<String> places = wanted.cellar().places().stream().map(Place::id).collect(Collectors.toSet());
        Map<String, TimeSeries> logs = new HashMap<>();
        logsOnDisk.keySet().stream().filter(places::contains).forEach(id -> logs.put(id, TimeSeries.empty()));
        logs.putAll(wanted.temperatures());
        logs.keySet().retainAll(places);
        return logs;
    }

    private static void attempt(List<InvalidInput> faults, Runnable save) {
        try {
            save.run();
        } catch (InvalidInput fault) {
            faults.add(fault);
        }
    }
}
