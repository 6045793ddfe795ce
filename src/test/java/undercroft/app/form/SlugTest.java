package undercroft.app.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.Check;

class SlugTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "Loft, loft",
                "Keller links, keller-links",
                "Crème brûlée  Stout!, creme-brulee-stout",
                "Weißbier 7, weissbier-7",
                "--- , place",
                "地下室, place"
            })
    void aNameBecomesAnId(String name, String id) {
        assertEquals(id, Slug.of(name, "place", List.of()));
    }

    @Test
    void aTakenIdGetsANumber() {
        assertEquals("loft-3", Slug.of("Loft", "place", List.of("loft", "loft-2")));
    }

    @Test
    void aLongNameIsCutToAValidId() {
        String id = Slug.of("word ".repeat(40), "place", List.of());

        assertTrue(id.length() <= 40);
        assertEquals(id, Check.id("id", id));
    }
}
