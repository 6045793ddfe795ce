package undercroft.picture;

import java.time.Duration;
import java.util.List;
import undercroft.outlook.spell.SpellReview;
import undercroft.series.Span;
import undercroft.wording.ShelfWords;

/**
 * A spell of a place on the season's picture.
 *
 * @param label how far it went, in words
 */
public record SeasonSpell(Span span, boolean warm, double peakCelsius, String label) {
    /** A place that is always cold has no spell of it. */
    private static final Duration LONGEST = Duration.ofDays(60);

    /** Those that touched bottles, in order of time. */
    static List<SeasonSpell> of(ShelfWords words, String placeId) {
        return words.outlook().spells().stream()
                .filter(spell ->
                        spell.place().id().equals(placeId) && !spell.impacts().isEmpty())
                .filter(spell -> Duration.between(spell.from(), spell.until()).compareTo(LONGEST) < 0)
                .sorted((one, other) -> one.from().compareTo(other.from()))
                .map(spell -> new SeasonSpell(
                        new Span(Season.second(spell.from()), Season.second(spell.until())),
                        spell.warm(),
                        spell.peakCelsius(),
                        label(words, spell)))
                .toList();
    }

    private static String label(ShelfWords words, SpellReview spell) {
        String peak = spell.warm()
                ? words.format().celsiusWorst(spell.peakCelsius())
                : words.format().wholeCelsius(spell.peakCelsius());
        return words.of(spell.warm() ? "season.spell.warm" : "season.spell.cold", peak);
    }
}
