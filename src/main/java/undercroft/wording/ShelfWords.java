package undercroft.wording;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import undercroft.catalogue.Listed;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.LotOutlook;

/**
 * What everything said about one shelf is written with: its language, its units, its zone, and dates as seen from its
 * instant.
 */
public record ShelfWords(CellarOutlook outlook, QuantityFormat format) {
    public static ShelfWords of(CellarOutlook outlook, Messages messages) {
        return new ShelfWords(
                outlook,
                QuantityFormat.of(
                        messages,
                        outlook.cellar().settings().units(),
                        outlook.cellar().zone()));
    }

    public Instant at() {
        return outlook.at();
    }

    /** The sentence with that key. */
    public String of(String key, Object... arguments) {
        return format.of(key, arguments);
    }

    public String name(Listed one) {
        return format.messages().name(one);
    }

    public String nameOf(Enum<?> one) {
        return format.messages().nameOf(one);
    }

    /** {@code 12 November}, with its year when that is not the present one. */
    public String day(Instant instant) {
        return format.day(instant, at());
    }

    public String day(LocalDate date) {
        return format.day(date, at());
    }

    /** {@code 12 November, 18:30}. */
    public String dayAndTime(Instant instant) {
        return format.dayAndTime(instant, at());
    }

    /** How a person says when: now, today 19:30, tomorrow 08:00, Saturday 18:00, 12 December. */
    public String when(Instant instant) {
        return format.when(instant, at());
    }

    /** {@code 8 to 17 August}. */
    public String days(Instant from, Instant until) {
        return format.days(from, until, at());
    }

    /** How warm it is in a place; where nothing is measured it is called a guess. */
    public String warmth(PlaceOutlook place) {
        return guessed(format.celsius(place.nowCelsius()), place);
    }

    /** How warm a lot's bottles are; where nothing is measured it is called a guess. */
    public String warmth(LotOutlook lot) {
        String now = format.celsius(lot.temperature().nowCelsius());
        return outlook.places().stream()
                .filter(place -> place.place().id().equals(lot.place().id()))
                .findFirst()
                .map(place -> guessed(now, place))
                .orElse(now);
    }

    private String guessed(String celsius, PlaceOutlook place) {
        return place.measured() ? celsius : of("shelf.climate.guess", celsius);
    }

    /** Full days from then until the instant looked at, the first day being 1. */
    public long dayNumber(Instant since) {
        return Math.max(0, Duration.between(since, at()).toDays()) + 1;
    }
}
