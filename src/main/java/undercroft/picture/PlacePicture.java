package undercroft.picture;

import java.util.List;
import java.util.function.Predicate;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.spell.SpellReview;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.SpanLayer;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.series.Track;
import undercroft.wording.ShelfWords;

/** The temperature of a place: air and bottles, with its spells shaded and what was not logged hatched. */
public record PlacePicture(ShelfWords words, PlaceOutlook place) {
    private static final long AIR_STEP_SECONDS = 6 * 3600;
    private static final long MARGIN_SECONDS = 8 * 86_400;

    /** All that is known up to now, beginning some days before a spell. */
    public PlotStack around(SpellReview spell) {
        PictureUnits units = new PictureUnits(words.format().units());
        Plot plot = Plot.of(
                        words.of("spells.plot.title", place.place().name(), units.temperatureUnit()),
                        units.temperatureAxis(),
                        new SpanLayer(spans(SpellReview::warm), Role.SPELL, words.of("spells.plot.warm")),
                        new SpanLayer(spans(each -> !each.warm()), Role.ROOM, words.of("spells.plot.cold")),
                        new SpanLayer(place.gaps(), Role.GAP, words.of("spells.plot.gap")))
                .with(new LineLayer(
                        units.temperature(place.air()),
                        AIR_STEP_SECONDS,
                        Stroke.of(Role.ROOM, 1).withOpacity(0.6),
                        place.air().isEmpty() ? "" : words.of("spells.plot.air")))
                .with(new LineLayer(
                        units.temperature(bottles()),
                        2L * place.bottles().stepSeconds(),
                        Stroke.of(Role.TEMPERATURE, 2),
                        words.of("spells.plot.bottles")));
        long from = Math.max(place.bottles().timeAt(0), spell.from().getEpochSecond() - MARGIN_SECONDS);
        return PlotStack.of(
                        from,
                        Math.max(from + 1, now()),
                        words.format().zone(),
                        words.format().messages().locale())
                .with(plot)
                .withNow(now(), words.of("date.now"));
    }

    public long end(SpellReview spell) {
        return Math.min(now(), spell.until().getEpochSecond() + MARGIN_SECONDS);
    }

    private long now() {
        return words.at().getEpochSecond();
    }

    private List<Span> spans(Predicate<SpellReview> kind) {
        return words.outlook().spells().stream()
                .filter(each -> each.place().id().equals(place.place().id()))
                .filter(kind)
                .map(each -> new Span(each.from().getEpochSecond(), each.until().getEpochSecond()))
                .toList();
    }

    private TimeSeries bottles() {
        Track track = place.bottles();
        TimeSeries.Builder past = new TimeSeries.Builder();
        for (int i = 0; i < track.size() && track.timeAt(i) <= now(); i++) {
            past.add(track.timeAt(i), track.valueAt(i));
        }
        return past.build();
    }
}
