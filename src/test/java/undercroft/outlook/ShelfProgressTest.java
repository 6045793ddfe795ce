package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.demo.LongCellar;
import undercroft.outlook.lot.BatchOutlook;

/** A shelf is told bit by bit while it is worked out. */
final class ShelfProgressTest {
    private final LongCellar shelf = new LongCellar(9, 2, 1, true);
    private final Cellar cellar = shelf.cellar();
    private final List<CellarOutlook> told = new ArrayList<>();

    private CellarOutlook outlook() {
        return Outlooks.of(cellar, shelf.temperatures(), LongCellar.NOW, List.of(), new ShelfMemory(), told::add);
    }

    @Test
    void everyPartHoldsMoreAndTheBatchesWithBottlesComeFirst() {
        CellarOutlook whole = outlook();
        assertEquals(List.of(), whole.pending());
        assertEquals(
                cellar.batches(),
                told.get(0).pending().stream().sorted(this::inOrder).toList());
        assertTrue(told.size() > 1 && told.size() < 5, told.size() + " parts");
        Set<BatchOutlook> known = new HashSet<>();
        for (CellarOutlook part : told) {
            assertEquals(2, part.places().size());
            assertEquals(
                    cellar.batches().size(),
                    part.batches().size() + part.pending().size());
            assertTrue(new HashSet<>(part.batches()).containsAll(known), "nothing is taken back");
            assertTrue(whole.batches().containsAll(part.batches()), "nor told otherwise later");
            known.addAll(part.batches());
        }
        List<Batch> last = told.get(told.size() - 1).pending();
        assertTrue(last.stream().allMatch(batch -> batch.leftAt(LongCellar.NOW) == 0));
    }

    @Test
    void nothingThatFollowsFromTheWholeShelfIsToldOfAPart() {
        CellarOutlook whole = outlook();
        assertTrue(!whole.tasks().isEmpty());
        for (CellarOutlook part : told) {
            assertEquals(List.of(), part.tasks());
            assertEquals(List.of(), part.spells());
            assertEquals(List.of(), part.problems());
        }
    }

    private int inOrder(Batch one, Batch other) {
        return Integer.compare(cellar.batches().indexOf(one), cellar.batches().indexOf(other));
    }
}
