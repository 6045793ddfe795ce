package undercroft.cellar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.InvalidInput;

/** Whatever is drawn, moved, taken back and undone: no bottle is lost and none appears. */
final class LedgerTest {
    private static final Instant CAPPED = Instant.parse("2026-01-01T12:00:00Z");
    private static final int START = 24 + 12;

    /** One thing done to the bottles; what is not possible there is left out. */
    record Deed(Sort sort, int lot, int bottles, int place) {
        enum Sort {
            DRAW,
            MOVE,
            TAKE_BACK,
            UNDO
        }
    }

    @Provide
    Arbitrary<List<Deed>> deeds() {
        return Combinators.combine(
                        Arbitraries.of(Deed.Sort.values()),
                        Arbitraries.integers().between(0, 9),
                        Arbitraries.integers().between(1, 15),
                        Arbitraries.integers().between(0, 2))
                .as(Deed::new)
                .list()
                .ofMaxSize(40);
    }

    @Property(tries = 500, seed = "20260104")
    void anySequenceOfDrawsMovesAndUndosKeepsTheSum(@ForAll("deeds") List<Deed> deeds) {
        Batch batch = batch();
        Deque<Batch> before = new ArrayDeque<>();
        Instant at = CAPPED;
        for (Deed deed : deeds) {
            at = at.plusSeconds(3600);
            if (deed.sort() == Deed.Sort.UNDO) {
                batch = before.isEmpty() ? batch : before.pop();
            } else {
                Batch changed = done(batch, deed, at);
                if (!changed.equals(batch)) {
                    before.push(batch);
                    batch = changed;
                }
            }
            check(batch, at);
        }
    }

    private static void check(Batch batch, Instant at) {
        int left = batch.leftAt(at);
        int drawn = batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .mapToInt(Draw::count)
                .sum();
        assertEquals(START, left + drawn);
        assertEquals(START, batch.lots().stream().mapToInt(Lot::count).sum());
        assertTrue(batch.lots().stream().allMatch(lot -> lot.left() >= 0 && lot.count() > 0));
    }

    private static Batch done(Batch batch, Deed deed, Instant at) {
        Lot lot = batch.lots().get(deed.lot() % batch.lots().size());
        try {
            return switch (deed.sort()) {
                case DRAW -> batch.withLot(lot.withDraw(new Draw(at, deed.bottles(), Draw.Fate.OPENED, "")));
                case MOVE -> batch.withMove(lot.id(), deed.bottles(), "place-" + deed.place(), at, Cover.NONE);
                case TAKE_BACK -> takenBack(batch, lot);
                case UNDO -> throw new IllegalArgumentException("undo is not done to a batch");
            };
        } catch (InvalidInput refused) {
            return batch;
        }
    }

    private static Batch takenBack(Batch batch, Lot lot) {
        if (lot.draws().isEmpty()) {
            return batch;
        }
        List<Draw> rest = new ArrayList<>(lot.draws());
        rest.remove(0);
        return batch.withLot(lot.withDraws(rest));
    }

    private static Batch batch() {
        return new Batch(
                "ale",
                "Ale",
                new Beer(BeerStyle.PALE_ALE, 5, 25, 0, 12, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(12, List.of(new SugarDose("dextrose", 70)), OptionalDouble.empty(), false),
                FillingMethod.CAREFUL,
                Optional.of(CAPPED),
                List.of(lot("one", 24), lot("two", 12)),
                List.of(),
                "");
    }

    private static Lot lot(String id, int count) {
        return new Lot(
                id,
                "longneck-330",
                GlassColour.AMBER,
                count,
                330,
                false,
                List.of(new Stay("place-0", CAPPED, Cover.NONE)),
                List.of());
    }
}
