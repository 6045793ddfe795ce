package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** What stands where on the drawn shelf: planks from top to bottom with their crates from left to right. */
public record ShelfPlan(List<Plank> planks, List<Crate> planned, List<Crate> gone) {
    public ShelfPlan {
        planks = List.copyOf(planks);
        planned = List.copyOf(planned);
        gone = List.copyOf(gone);
    }

    /** What comes first. */
    public enum Order {
        ATTENTION,
        PLACE,
        NAME,
        AGE
    }

    /** A place with the crates that stand in it; {@code climate} is its temperature and trend in words. */
    public record Plank(String placeId, String name, String climate, List<Crate> crates) {
        public Plank {
            crates = List.copyOf(crates);
        }

        Alert alert() {
            return crates.stream().map(Crate::alert).reduce(Alert.CLEAR, Alert::or);
        }
    }

    /**
     * The bottles of one batch in one place.
     *
     * @param lotId the lot shown when the crate is chosen; empty for a batch that is not capped
     * @param racks the bottles by make and colour
     * @param fill how far the coming carbonation has formed, 0 to 1
     * @param state age and stage in a few words
     * @param sentence everything on the crate, for those who hear it
     * @param words what a search may find it by, in small letters
     * @param pending whether its forecast is still being made: nothing is known of it but what was told
     */
    public record Crate(
            String key,
            String batchId,
            String lotId,
            String name,
            Stage stage,
            Alert alert,
            String state,
            List<Rack> racks,
            double fill,
            long ageSeconds,
            String sentence,
            String words,
            boolean pending) {
        public Crate {
            racks = List.copyOf(racks);
        }

        /** Whether every word of a search is in one of its own. */
        boolean isFoundBy(String search) {
            return Stream.of(search.toLowerCase(Locale.ROOT).trim().split("\\s+"))
                    .allMatch(words::contains);
        }

        /** The place it stands in; empty for a batch that is not capped. */
        public String placeId() {
            return key.substring(Math.min(key.length(), batchId.length() + 1));
        }

        public int count() {
            return racks.stream().mapToInt(Rack::count).sum();
        }

        public int left() {
            return racks.stream().mapToInt(Rack::left).sum();
        }
    }

    /** Bottles of one make and colour: how many there were and how many are left. */
    public record Rack(BottleType type, GlassColour colour, int count, int left) {}

    public static ShelfPlan of(CellarOutlook outlook, Order order, Messages messages) {
        Map<String, List<Crate>> standing = new LinkedHashMap<>();
        List<Crate> planned = new ArrayList<>();
        List<Crate> gone = new ArrayList<>();
        ShelfWords words = ShelfWords.of(outlook, messages);
        for (BatchOutlook batch : outlook.batches()) {
            CrateWriter writer = new CrateWriter(outlook, batch, words);
            if (!batch.isCapped()) {
                planned.add(writer.planned());
            } else if (batch.bottlesLeft() == 0) {
                gone.add(writer.crate(batch.lots().get(0).place(), batch.lots()));
            } else {
                Map<String, List<LotOutlook>> byPlace = new LinkedHashMap<>();
                batch.lots().stream()
                        .filter(lot -> lot.left() > 0)
                        .forEach(lot -> byPlace.computeIfAbsent(lot.place().id(), id -> new ArrayList<>())
                                .add(lot));
                byPlace.forEach((placeId, lots) -> standing.computeIfAbsent(placeId, id -> new ArrayList<>())
                        .add(writer.crate(lots.get(0).place(), lots)));
            }
        }
        for (Batch batch : outlook.pending()) {
            new PendingCrates(outlook, batch, words)
                    .byPlace()
                    .forEach((placeId, crate) -> standing.computeIfAbsent(placeId, id -> new ArrayList<>())
                            .add(crate));
        }
        Map<String, String> climates = new HashMap<>();
        outlook.places().forEach(place -> climates.put(place.place().id(), climate(place, words)));
        List<Plank> planks = new ArrayList<>();
        for (Place place : outlook.cellar().places()) {
            List<Crate> crates = new ArrayList<>(standing.getOrDefault(place.id(), List.of()));
            crates.sort(crateOrder(order));
            planks.add(new Plank(place.id(), place.name(), climates.getOrDefault(place.id(), ""), crates));
        }
        if (order != Order.PLACE) {
            planks.sort(plankOrder(order));
        }
        planned.sort(crateOrder(Order.NAME));
        gone.sort(crateOrder(Order.NAME));
        return new ShelfPlan(planks, planned, gone);
    }

    private static Comparator<Crate> crateOrder(Order order) {
        return switch (order) {
            case ATTENTION ->
                Comparator.comparing(Crate::alert)
                        .reversed()
                        .thenComparing(Crate::stage)
                        .thenComparing(Crate::ageSeconds, Comparator.reverseOrder());
            case NAME -> Comparator.comparing(crate -> crate.name().toLowerCase(Locale.ROOT));
            case PLACE, AGE -> Comparator.comparing(Crate::ageSeconds, Comparator.reverseOrder());
        };
    }

    private static Comparator<Plank> plankOrder(Order order) {
        Comparator<Plank> emptyLast =
                Comparator.comparing(plank -> plank.crates().isEmpty());
        return switch (order) {
            case ATTENTION -> emptyLast.thenComparing(Plank::alert, Comparator.reverseOrder());
            case PLACE, NAME -> Comparator.comparing(plank -> plank.name().toLowerCase(Locale.ROOT));
            case AGE ->
                emptyLast.thenComparing(
                        plank -> plank.crates().stream()
                                .mapToLong(Crate::ageSeconds)
                                .max()
                                .orElse(0),
                        Comparator.reverseOrder());
        };
    }

    private static String climate(PlaceOutlook place, ShelfWords words) {
        String now = words.warmth(place);
        if (!place.measured() || Math.abs(place.trendKelvin()) < 0.75) {
            return now;
        }
        return words.of(place.trendKelvin() > 0 ? "shelf.climate.rising" : "shelf.climate.falling", now);
    }

    /** Without the crates that are not wanted, and without the places that are left with none. */
    ShelfPlan only(Predicate<Crate> wanted) {
        return new ShelfPlan(
                planks.stream()
                        .map(plank ->
                                new Plank(plank.placeId(), plank.name(), plank.climate(), kept(plank.crates(), wanted)))
                        .filter(plank -> !plank.crates().isEmpty())
                        .toList(),
                kept(planned, wanted),
                kept(gone, wanted));
    }

    private static List<Crate> kept(List<Crate> crates, Predicate<Crate> wanted) {
        return crates.stream().filter(wanted).toList();
    }

    /** Every crate that can be chosen, in reading order. */
    public List<Crate> crates() {
        List<Crate> all = new ArrayList<>();
        planks.forEach(plank -> all.addAll(plank.crates()));
        all.addAll(planned);
        all.addAll(gone);
        return all;
    }

    static List<Rack> racks(CellarOutlook outlook, List<Lot> lots, List<Integer> left) {
        List<Rack> racks = new ArrayList<>();
        for (int i = 0; i < lots.size(); i++) {
            Lot lot = lots.get(i);
            racks.add(
                    new Rack(outlook.cellar().bottleType(lot.bottleTypeId()), lot.colour(), lot.count(), left.get(i)));
        }
        return racks;
    }
}
