package undercroft.session;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/**
 * The cellar that is open: one immutable value at a time, every change undoable and saved by itself. All methods are for
 * the window's thread; saving goes on in the background, in order.
 */
public final class Workspace {
    private static final int DEEPEST_UNDO = 200;

    private final Autosave autosave;
    private final List<InvalidInput> faults;
    private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(this, "state");
    private final ReadOnlyStringWrapper undoText = new ReadOnlyStringWrapper(this, "undoText", "");
    private final ReadOnlyStringWrapper redoText = new ReadOnlyStringWrapper(this, "redoText", "");
    private final ReadOnlyObjectWrapper<Deed> newest = new ReadOnlyObjectWrapper<>(this, "newest");
    private int deeds;
    private final Deque<Step> undos = new ArrayDeque<>();
    private final Deque<Step> redos = new ArrayDeque<>();
    private final Optional<InvalidInput> lookOnly;

    /** {@code saving} must run its work one after the other. */
    public Workspace(CellarRepository repository, BackgroundTasks saving) {
        this(repository, saving, Optional.empty());
    }

    /** {@code lookOnly} is what any change is answered with, where the cellar is only looked at. */
    public Workspace(CellarRepository repository, BackgroundTasks saving, Optional<InvalidInput> lookOnly) {
        this.lookOnly = lookOnly;
        State read = new State(repository.cellar(), Map.copyOf(repository.temperatures()));
        this.faults = List.copyOf(repository.faults());
        this.autosave = new Autosave(repository, saving, read, this::takeInWritten);
        state.set(read);
    }

    /** The cellar with the temperatures logged in its places, by place id. */
    public record State(Cellar cellar, Map<String, TimeSeries> temperatures) {}

    /**
     * One thing a person did, or took back.
     *
     * @param number tells two deeds of the same words apart
     */
    public record Deed(int number, String what, boolean undone) {}

    private record Step(String what, String group, State before, State after) {}

    public ReadOnlyObjectProperty<State> stateProperty() {
        return state.getReadOnlyProperty();
    }

    public State getState() {
        return state.get();
    }

    public Cellar getCellar() {
        return state.get().cellar();
    }

    /** Why nothing can be changed, where that is so. */
    public Optional<InvalidInput> lookOnly() {
        return lookOnly;
    }

    /** What undo would take back, or empty. */
    public ReadOnlyStringProperty undoTextProperty() {
        return undoText.getReadOnlyProperty();
    }

    /** What redo would do again, or empty. */
    public ReadOnlyStringProperty redoTextProperty() {
        return redoText.getReadOnlyProperty();
    }

    /**
     * What was done or taken back last; null at first. What is typed along a page, what a logger adds and how things are
     * shown is nothing of the kind.
     */
    public ReadOnlyObjectProperty<Deed> newestProperty() {
        return newest.getReadOnlyProperty();
    }

    /** Why the newest change is not on disk; null while all is saved. */
    public ReadOnlyObjectProperty<InvalidInput> saveFaultProperty() {
        return autosave.faultProperty();
    }

    /** What could not be read of the logs: lines and files that are left out, and stay as they are on the disk. */
    public List<InvalidInput> faults() {
        return faults;
    }

    /** Whether anything is not on the disk. May be asked from any thread, so that it can be asked at the end. */
    public boolean hasUnsaved() {
        return autosave.hasUnsaved();
    }

    /** Tries again to save what is not on the disk. */
    public void saveAgain() {
        autosave.saveAgain();
    }

    /**
     * Writes all there is as a cellar of its own into another folder, new or empty, for when the one that is open cannot
     * be written. Blocks on a disk.
     */
    public void saveElsewhere(Path folder) {
        autosave.saveElsewhere(folder);
    }

    /** Makes a change that undo can take back; what was logged for places that went goes too. An {@link InvalidInput} from it leaves everything as it was. */
    public void change(String what, UnaryOperator<Cellar> change) {
        if (step(what, change)) {
            told(what, false);
        }
    }

    private boolean step(String what, UnaryOperator<Cellar> change) {
        State before = state.get();
        Cellar changed = change.apply(before.cellar());
        if (!changed.equals(before.cellar())) {
            Map<String, TimeSeries> all = new HashMap<>(before.temperatures());
            all.keySet().retainAll(changed.places().stream().map(Place::id).toList());
            did(new Step(what, "", before, new State(changed, Map.copyOf(all))));
            return true;
        }
        return false;
    }

    /**
     * Changes how things are shown, such as units. It is no step of its own: undo does not take it back and redo is kept,
     * since every earlier and later state changes alike.
     */
    public void changeThroughout(UnaryOperator<Cellar> change) {
        State before = state.get();
        UnaryOperator<State> all = each -> new State(change.apply(each.cellar()), each.temperatures());
        State after = all.apply(before);
        if (!after.equals(before)) {
            replaceAll(undos, all);
            replaceAll(redos, all);
            show(after);
        }
    }

    /** As {@link #change}; changes of one {@code group} that follow each other are taken back together. */
    public void changeTogether(String what, String group, UnaryOperator<Cellar> change) {
        Step last = undos.peek();
        boolean goesOn = last != null && group.equals(last.group()) && redos.isEmpty();
        State before = state.get();
        if (step(what, change)) {
            Step step = undos.pop();
            if (goesOn) {
                undos.pop();
            }
            undos.push(new Step(what, group, goesOn ? last.before() : before, step.after()));
        }
    }

    /** Replaces what is logged for a place, which follows its log from then on; undoable. */
    public void changeTemperatures(String what, String placeId, TimeSeries celsius) {
        changeTemperatures(what, placeId, celsius, UnaryOperator.identity());
    }

    /** The same with another change of the cellar, in one step. */
    public void changeTemperatures(String what, String placeId, TimeSeries celsius, UnaryOperator<Cellar> also) {
        State before = state.get();
        Map<String, TimeSeries> all = new HashMap<>(before.temperatures());
        all.put(placeId, celsius);
        Place place = before.cellar().place(placeId);
        Cellar logged = before.cellar().withPlace(place.withTemperature(new TemperatureSource.Logged()));
        did(new Step(what, "", before, new State(also.apply(logged), Map.copyOf(all))));
        told(what, false);
    }

    /**
     * Takes in what a place's logger added. Nobody did it, so undo does not take it back, and steps that knew the log as it
     * was know it as it is now.
     *
     * @param known the log the addition was worked out from
     * @return false when the log is another by now; work it out again
     */
    @SuppressWarnings("ReferenceEquality")
    public boolean takeIn(String placeId, TimeSeries known, TimeSeries grown) {
        State before = state.get();
        TimeSeries now = before.temperatures().getOrDefault(placeId, TimeSeries.empty());
        if (now != known) {
            return false;
        }
        UnaryOperator<State> grow = each -> each.temperatures().getOrDefault(placeId, TimeSeries.empty()) == known
                ? new State(each.cellar(), with(each.temperatures(), placeId, grown))
                : each;
        replaceAll(undos, grow);
        replaceAll(redos, grow);
        show(grow.apply(before));
        return true;
    }

    /** What another program wrote into a log and stands on the disk already. */
    private void takeInWritten(String placeId, TimeSeries added) {
        TimeSeries known = getState().temperatures().getOrDefault(placeId, TimeSeries.empty());
        takeIn(placeId, known, known.mergedWith(added));
    }

    private static Map<String, TimeSeries> with(Map<String, TimeSeries> all, String placeId, TimeSeries series) {
        Map<String, TimeSeries> changed = new HashMap<>(all);
        changed.put(placeId, series);
        return Map.copyOf(changed);
    }

    private static void replaceAll(Deque<Step> steps, UnaryOperator<State> grow) {
        List<Step> grown = steps.stream()
                .map(step -> new Step(step.what(), step.group(), grow.apply(step.before()), grow.apply(step.after())))
                .toList();
        steps.clear();
        steps.addAll(grown);
    }

    public void undo() {
        if (!undos.isEmpty()) {
            Step step = undos.pop();
            redos.push(step);
            show(step.before());
            told(step.what(), true);
        }
    }

    public void redo() {
        if (!redos.isEmpty()) {
            Step step = redos.pop();
            undos.push(step);
            show(step.after());
            told(step.what(), false);
        }
    }

    private void did(Step step) {
        if (lookOnly.isPresent()) {
            throw lookOnly.get();
        }
        undos.push(step);
        if (undos.size() > DEEPEST_UNDO) {
            undos.removeLast();
        }
        redos.clear();
        show(step.after());
    }

    private void told(String what, boolean undone) {
        deeds++;
        newest.set(new Deed(deeds, what, undone));
    }

    private void show(State to) {
        undoText.set(undos.isEmpty() ? "" : undos.peek().what());
        redoText.set(redos.isEmpty() ? "" : redos.peek().what());
        state.set(to);
        autosave.save(to);
    }
}
