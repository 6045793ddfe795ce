package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.PourShelf.local;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Settling;
import undercroft.cellar.Cellar;

final class PourChoicesTest {
    private static final Instant NOW = local("2026-09-10T12:00");
    private static final Instant EVENING = local("2026-09-12T18:00");
    private static final Cellar CELLAR = PourShelf.cellar(
            PourShelf.ale("fresh", Settling.ORDINARY, 40, "room", local("2026-08-01T12:00")),
            PourShelf.ale("old", Settling.ORDINARY, 40, "room", local("2026-01-10T12:00")),
            PourShelf.ale("young", Settling.ORDINARY, 40, "room", local("2026-09-08T12:00")),
            PourShelf.ale("few", Settling.ORDINARY, 3, "room", local("2026-08-01T12:00")));

    private static List<PourChoice> choices(Cellar cellar, int bottles) {
        return PourChoices.of(PourShelf.outlook(cellar, NOW), EVENING, bottles);
    }

    private static PourChoice choice(List<PourChoice> all, String batchId) {
        return all.stream()
                .filter(each -> each.batchId().equals(batchId))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theTiredOneIsPouredBeforeTheFreshOneAndTheUnreadyComesLast() {
        assertEquals(
                List.of("old", "fresh", "few", "young"),
                choices(CELLAR, 8).stream().map(PourChoice::batchId).toList());
    }

    @Test
    void eachIsToldWhy() {
        List<PourChoice> all = choices(CELLAR, 8);
        assertTrue(choice(all, "old").reasons().contains("tired: past its keeping time"));
        assertTrue(choice(all, "few").reasons().contains("only 3 bottles"));
        assertTrue(choice(all, "young").reasons().contains("not ready by then"));
        assertFalse(choice(all, "few").enough());
    }

    @Test
    void whatIsPromisedIsNotPouredTwice() {
        Cellar promised = CELLAR.withPours(List.of(PourShelf.pour("other", "old", 38, EVENING)));
        PourChoice old = choice(choices(promised, 8), "old");
        assertEquals(2, old.free());
        assertFalse(old.enough());
        assertEquals("fresh", choices(promised, 8).get(0).batchId());
    }

    @Test
    void aShelfWithoutBottlesOffersNothing() {
        assertEquals(List.of(), choices(PourShelf.cellar(), 8));
    }
}
