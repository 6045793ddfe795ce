package undercroft.outlook.serving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.ServingShelf.local;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Flocculation;
import undercroft.cellar.Cellar;
import undercroft.outlook.ServingShelf;

final class ServingChoicesTest {
    private static final Instant NOW = local("2026-09-10T12:00");
    private static final Instant EVENING = local("2026-09-12T18:00");
    private static final Cellar CELLAR = ServingShelf.cellar(
            ServingShelf.ale("fresh", Flocculation.ORDINARY, 40, "room", local("2026-08-01T12:00")),
            ServingShelf.ale("old", Flocculation.ORDINARY, 40, "room", local("2026-01-10T12:00")),
            ServingShelf.ale("young", Flocculation.ORDINARY, 40, "room", local("2026-09-08T12:00")),
            ServingShelf.ale("few", Flocculation.ORDINARY, 3, "room", local("2026-08-01T12:00")));

    private static List<ServingChoice> choices(Cellar cellar, int bottles) {
        return ServingShelf.outlook(cellar, NOW).choices(EVENING, bottles);
    }

    private static ServingChoice choice(List<ServingChoice> all, String batchId) {
        return all.stream()
                .filter(each -> each.batchId().equals(batchId))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsPastBestBeforeIsServedBeforeTheFreshOneAndTheUnreadyComesLast() {
        assertEquals(
                List.of("old", "fresh", "few", "young"),
                choices(CELLAR, 8).stream().map(ServingChoice::batchId).toList());
    }

    @Test
    void eachIsToldWhy() {
        List<ServingChoice> all = choices(CELLAR, 8);
        assertTrue(choice(all, "old").reasons().contains(ServingChoice.Reason.PAST_BEST_BEFORE));
        assertEquals(3, choice(all, "few").free());
        assertFalse(choice(all, "young").mayBeReady());
        assertFalse(choice(all, "few").enough());
    }

    @Test
    void whatIsPromisedIsNotPouredTwice() {
        Cellar promised = CELLAR.withServings(List.of(ServingShelf.serving("other", "old", 38, EVENING)));
        ServingChoice old = choice(choices(promised, 8), "old");
        assertEquals(2, old.free());
        assertFalse(old.enough());
        assertEquals("fresh", choices(promised, 8).get(0).batchId());
    }

    @Test
    void aShelfWithoutBottlesOffersNothing() {
        assertEquals(List.of(), choices(ServingShelf.cellar(), 8));
    }
}
