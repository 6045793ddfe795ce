package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.report.Shelves;
import undercroft.wording.English;
import undercroft.wording.Headlines;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

final class ShelfTableTest {
    @Test
    void whatWantsAttentionComesFirstAndWhatIsOffTheShelfLast() {
        List<String> lines =
                ShelfTable.of(English.of(Shelves.DEMO), 400).lines().toList();
        assertEquals(14, lines.size(), "a heading and thirteen batches");
        assertTrue(lines.get(1).matches("act now +Millrace Saison .*"), lines.get(1));
        assertTrue(lines.get(13).contains("Lantern Stout"), lines.get(13));
    }

    @Test
    void aLongHeadlineGoesOnBelowWithoutLosingAWord() {
        String narrow = ShelfTable.of(English.of(Shelves.DEMO), 100).replaceAll("\\s+", " ");
        assertTrue(narrow.contains("Nothing is lost: it goes on when it stands warmer."), narrow);
    }

    @ParameterizedTest
    @ValueSource(ints = {70, 80, 100, 200})
    void noLineIsWiderThanTheTerminal(int width) {
        ShelfTable.of(English.of(Shelves.DEMO), width)
                .lines()
                .forEach(line -> assertTrue(line.length() <= width, width + ": " + line));
    }

    @Test
    void aWideTerminalShowsTheWholeHeadline() {
        String table = ShelfTable.of(English.of(Shelves.DEMO), 400);
        Shelves.DEMO
                .batches()
                .forEach(batch -> assertTrue(
                        table.contains(new Headlines(ShelfWords.of(Shelves.DEMO, Messages.english())).of(batch))));
    }

    @Test
    void namesCannotSteerTheTerminal() {
        String table = ShelfTable.of(English.of(Shelves.HOSTILE), 120);
        assertFalse(table.chars().anyMatch(c -> c != '\n' && Character.isISOControl(c)));
        assertFalse(table.contains("\u202E"));
    }

    @Test
    void anEmptyShelfIsOneSentence() {
        assertEquals("Nothing has been bottled yet.\n", ShelfTable.of(English.of(Shelves.EMPTY), 80));
    }
}
