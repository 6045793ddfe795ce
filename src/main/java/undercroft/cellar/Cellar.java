package undercroft.cellar;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Volume;

/**
 * A cellar: everything the user has told. Every reference inside it resolves; every id is unique in its list.
 *
 * @param zone the wall clock of the cellar
 * @param ownBottles bottle makes of the user's own, beside the standard ones
 * @param ownSugars sugars of the user's own, beside the standard ones
 * @param taskNotes what was said to lines of To do, one note a task
 */
public record Cellar(
        String name,
        ZoneId zone,
        Settings settings,
        List<Place> places,
        List<Batch> batches,
        List<Serving> servings,
        List<BottleType> ownBottles,
        List<Sugar> ownSugars,
        List<TaskNote> taskNotes) {
    public Cellar {
        name = Check.text("name", name);
        places = List.copyOf(places);
        batches = List.copyOf(batches);
        servings = List.copyOf(servings);
        ownBottles = List.copyOf(ownBottles);
        ownSugars = List.copyOf(ownSugars);
        taskNotes = List.copyOf(taskNotes);
        checkUnique("places", places.stream().map(Place::id).toList());
        checkUnique("batches", batches.stream().map(Batch::id).toList());
        checkUnique("servings", servings.stream().map(Serving::id).toList());
        checkUnique("bottles", ownBottles.stream().map(BottleType::id).toList());
        checkUnique("sugars", ownSugars.stream().map(Sugar::id).toList());
        List<BottleType> bottles = join(ownBottles, Bottles.STANDARD);
        List<Sugar> sugars = join(ownSugars, Sugars.STANDARD);
        for (int i = 0; i < batches.size(); i++) {
            try {
                checkReferences(batches.get(i), places, bottles, sugars);
            } catch (InvalidInput fault) {
                throw fault.within("batches[" + i + "]");
            }
        }
        for (int i = 0; i < servings.size(); i++) {
            String at = "servings[" + i + "]";
            Listed.find(batches, servings.get(i).batchId(), at + ".batch");
            if (servings.get(i).placeId().isPresent()) {
                Listed.find(places, servings.get(i).placeId().get(), at + ".place");
            }
        }
    }

    /** A cellar in which nothing was said to any line of To do. */
    public Cellar(
            String name,
            ZoneId zone,
            Settings settings,
            List<Place> places,
            List<Batch> batches,
            List<Serving> servings,
            List<BottleType> ownBottles,
            List<Sugar> ownSugars) {
        this(name, zone, settings, places, batches, servings, ownBottles, ownSugars, List.of());
    }

    /** A new cellar with nothing in it. */
    public static Cellar empty(String name, ZoneId zone) {
        return new Cellar(name, zone, Settings.USUAL, List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static void checkUnique(String list, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < ids.size(); i++) {
            if (!seen.add(ids.get(i))) {
                throw new InvalidInput(list + "[" + i + "].id", "cellar.fault.twice", ids.get(i));
            }
        }
    }

    private static void checkReferences(Batch batch, List<Place> places, List<BottleType> bottles, List<Sugar> sugars) {
        for (int i = 0; i < batch.priming().doses().size(); i++) {
            Listed.find(sugars, batch.priming().doses().get(i).sugarId(), "priming.sugars[" + i + "].sugar");
        }
        if (batch.plan().isPresent()) {
            FillingPlan plan = batch.plan().get();
            Listed.find(sugars, plan.wish().sugarId(), "plan.sugar");
            for (int i = 0; i < plan.bottles().size(); i++) {
                Listed.find(bottles, plan.bottles().get(i).bottleTypeId(), "plan.bottles[" + i + "].bottle");
            }
        }
        for (int i = 0; i < batch.lots().size(); i++) {
            Lot lot = batch.lots().get(i);
            String at = "lots[" + i + "]";
            BottleType type = Listed.find(bottles, lot.bottleTypeId(), at + ".bottle");
            if (lot.fillMillilitres() >= type.brimfulMillilitres()) {
                throw new InvalidInput(
                        at + ".fillMillilitres",
                        "cellar.fault.over-brim",
                        Volume.ofMillilitres(type.brimfulMillilitres()));
            }
            for (int j = 0; j < lot.stays().size(); j++) {
                Listed.find(places, lot.stays().get(j).placeId(), at + ".stays[" + j + "].place");
            }
        }
    }

    private static <T extends Listed> List<T> join(List<T> own, List<T> standard) {
        List<T> all = new ArrayList<>(own);
        for (T entry : standard) {
            if (own.stream().noneMatch(mine -> mine.id().equals(entry.id()))) {
                all.add(entry);
            }
        }
        return List.copyOf(all);
    }

    /** The user's own bottle makes first, then the standard ones; an own make stands in for a standard one of its id. */
    public List<BottleType> bottleTypes() {
        return join(ownBottles, Bottles.STANDARD);
    }

    /** The user's own sugars first, then the standard ones. */
    public List<Sugar> sugars() {
        return join(ownSugars, Sugars.STANDARD);
    }

    public BottleType bottleType(String id) {
        return Listed.find(bottleTypes(), id, "bottle");
    }

    public Sugar sugar(String id) {
        return Listed.find(sugars(), id, "sugar");
    }

    public Place place(String id) {
        return Listed.find(places, id, "place");
    }

    public Batch batch(String id) {
        return Listed.find(batches, id, "batch");
    }

    public Cellar withName(String newName) {
        return new Cellar(newName, zone, settings, places, batches, servings, ownBottles, ownSugars, taskNotes);
    }

    public Cellar withZone(ZoneId newZone) {
        return new Cellar(name, newZone, settings, places, batches, servings, ownBottles, ownSugars, taskNotes);
    }

    public Cellar withSettings(Settings newSettings) {
        return new Cellar(name, zone, newSettings, places, batches, servings, ownBottles, ownSugars, taskNotes);
    }

    public Cellar withPlaces(List<Place> newPlaces) {
        return new Cellar(name, zone, settings, newPlaces, batches, servings, ownBottles, ownSugars, taskNotes);
    }

    public Cellar withBatches(List<Batch> newBatches) {
        return new Cellar(name, zone, settings, places, newBatches, servings, ownBottles, ownSugars, taskNotes);
    }

    public Cellar withServings(List<Serving> newServings) {
        return new Cellar(name, zone, settings, places, batches, newServings, ownBottles, ownSugars, taskNotes);
    }

    public Cellar withOwnBottles(List<BottleType> newBottles) {
        return new Cellar(name, zone, settings, places, batches, servings, newBottles, ownSugars, taskNotes);
    }

    public Cellar withOwnSugars(List<Sugar> newSugars) {
        return new Cellar(name, zone, settings, places, batches, servings, ownBottles, newSugars, taskNotes);
    }

    public Cellar withTaskNotes(List<TaskNote> newTaskNotes) {
        return new Cellar(name, zone, settings, places, batches, servings, ownBottles, ownSugars, newTaskNotes);
    }

    /** With what was said to one task last; notes on it before, and those that ran out by then, are let go. */
    public Cellar withTaskNote(TaskNote note, Instant at) {
        List<TaskNote> all = new ArrayList<>();
        for (TaskNote each : taskNotes) {
            if (!each.taskKey().equals(note.taskKey()) && each.holdsAt(at)) {
                all.add(each);
            }
        }
        all.add(note);
        return withTaskNotes(all);
    }

    public Cellar withServing(Serving serving) {
        return withServings(replaced(servings, serving));
    }

    /** The place with the same id replaced, or added at the end. */
    public Cellar withPlace(Place place) {
        return withPlaces(replaced(places, place));
    }

    /** The batch with the same id replaced, or added at the end. */
    public Cellar withBatch(Batch batch) {
        return withBatches(replaced(batches, batch));
    }

    private static <T extends Listed> List<T> replaced(List<T> list, T entry) {
        List<T> all = new ArrayList<>(list);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(entry.id())) {
                all.set(i, entry);
                return all;
            }
        }
        all.add(entry);
        return all;
    }
}
