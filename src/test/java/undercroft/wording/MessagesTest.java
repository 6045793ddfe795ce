package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.quantity.Volume;

@Isolated("one test changes the language of the machine")
class MessagesTest {
    private final Messages english = Messages.in(Locale.ENGLISH);

    @Test
    void aPluralFollowsItsNumber() {
        assertEquals("0 bottles", english.of("count.bottles", 0));
        assertEquals("1 bottle", english.of("count.bottles", 1));
        assertEquals("1,200 bottles", english.of("count.bottles", 1200));
    }

    @Test
    void aKeyThatIsNowhereIsAProgrammersFault() {
        assertThrows(MissingResourceException.class, () -> english.of("count.elephants", 2));
        assertThrows(MissingResourceException.class, () -> english.of("elephants.two"));
    }

    @Test
    void aFaultIsSaidWithItsPlace() {
        InvalidInput fault = new InvalidInput("lots[0].count", "form.fault.too-many", 90, 24);
        assertEquals("lots[0].count: 90 is too many; give at most 24", english.fault(fault));
        assertEquals("90 is too many; give at most 24", english.what(fault.at("")));
        assertEquals("--count: 90 is too many; give at most 24", english.fault(fault.at("--count")));
    }

    @Test
    void aFaultWithinAFaultIsSaidToo() {
        Phrase inner = Phrase.of("count.bottles", 3);
        assertEquals("3 bottles.", english.of("fault.plain", inner));
        assertEquals(
                "x: 3 bottles",
                english.fault(new InvalidInput("x", "fault.plain", inner)).replace(".", ""));
    }

    @Test
    void quantitiesInAFaultHaveTheirUnit() {
        InvalidInput fault =
                new InvalidInput("", "form.fault.more-bottles-than-beer", Volume.ofLitres(20), Volume.ofLitres(19));
        assertEquals(
                "this is less than the bottles below hold: they take 20.0 L, but only 19.0 L was primed; correct the beer or the counts",
                english.what(fault));
    }

    @Test
    void aNumberGivenIsSaidAsItWasGiven() {
        assertEquals("1.0125.", english.of("fault.plain", 1.0125));
        assertEquals("3.", english.of("fault.plain", 3.0));
        assertEquals("0.333333.", english.of("fault.plain", 1 / 3.0));
    }

    @Test
    void aLanguageThatIsNotSpokenIsAnsweredInEnglishWhateverTheMachineSpeaks() {
        Locale before = Locale.getDefault();
        try {
            for (Locale machine : List.of(Locale.GERMANY, Locale.forLanguageTag("ar-EG"), Locale.US)) {
                Locale.setDefault(machine);
                for (Locale asked : List.of(Locale.forLanguageTag("ar-EG"), Locale.ROOT, Locale.US)) {
                    Messages messages = Messages.in(asked);
                    assertEquals(Locale.UK, messages.locale());
                    assertEquals("1,200 bottles", messages.of("count.bottles", 1200));
                }
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void sentencesBeginWithACapitalAndEnd() {
        assertEquals("Is empty.", english.sentence("is empty"));
        assertEquals("Really?", english.sentence("really?"));
        assertEquals("", english.sentence(""));
        assertEquals("a, b and c", english.list(List.of("a", "b", "c")));
        assertEquals("a and b", english.list(List.of("a", "b")));
        assertEquals("a", english.list(List.of("a")));
    }
}
