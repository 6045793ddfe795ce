package undercroft.outlook.climate;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import undercroft.calc.spell.BottleHistory;
import undercroft.calc.spell.BottleLag;
import undercroft.calc.spell.ColdRest;
import undercroft.calc.spell.Spell;
import undercroft.calc.spell.SpellFinder;
import undercroft.calc.spell.SpellRule;
import undercroft.calc.spell.TemperatureAhead;
import undercroft.calc.spell.WarmestWeek;
import undercroft.calc.spell.YearlySwing;
import undercroft.calc.spell.YeastLimits;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/**
 * What bottles in a place felt and will feel, on one hourly grid that all places share, so that a lot can be followed from
 * place to place.
 *
 * @param bottles past and ahead, °C with its standard deviation
 * @param air the log without what no room ever had, up to the outlook's instant; empty for a place without one
 * @param gaps stretches of more than six hours without a log
 * @param spells found in the past
 * @param warmestWeek of its year
 */
public record PlaceClimate(
        Place place,
        Track bottles,
        TimeSeries air,
        List<Span> gaps,
        List<Spell> spells,
        WarmestWeek warmestWeek,
        long firstKnown,
        long lastKnown) {
    public static final int STEP_SECONDS = 3600;
    private static final long YEAR_SECONDS = 366L * 86_400;
    private static final double FROST_CELSIUS = -2;
    /** A log older than this no longer tells what the place is like now. */
    private static final long STALE_SECONDS = 6 * 3600;
    /** What an unknown room is taken for until anything is logged (assumption). */
    private static final TemperatureSource.FixedGuess UNKNOWN_ROOM = new TemperatureSource.FixedGuess(18, 4);

    /**
     * The climate of a place.
     *
     * @param air its clean log up to {@code at}
     * @param limits of the yeasts whose bottles stood there
     */
    public static PlaceClimate of(
            Place place, TimeSeries air, YeastLimits limits, long gridFrom, Instant at, long horizon) {
        if (place.temperature() instanceof TemperatureSource.FixedGuess guess) {
            return guessed(
                    place,
                    TemperatureAhead.guess(guess.celsius(), guess.spreadKelvin()),
                    warmestWeek(place, guess),
                    gridFrom,
                    horizon);
        }
        if (place.temperature() instanceof TemperatureSource.YearlySwing swing) {
            int warmest = swing.warmestDay()
                    .atYear(at.atZone(ZoneOffset.UTC).getYear())
                    .getDayOfYear();
            YearlySwing year = new YearlySwing(swing.meanCelsius(), swing.amplitudeKelvin(), warmest);
            return guessed(
                    place,
                    TemperatureAhead.yearly(year, swing.spreadKelvin()),
                    WarmestWeek.ofYear(year, swing.spreadKelvin()),
                    gridFrom,
                    horizon);
        }
        if (air.isEmpty()) {
            return guessed(
                    place,
                    TemperatureAhead.guess(UNKNOWN_ROOM.celsius(), UNKNOWN_ROOM.spreadKelvin()),
                    WarmestWeek.entered(place.summerMaximumCelsius()),
                    gridFrom,
                    horizon);
        }
        return logged(place, air, limits, gridFrom, at, horizon);
    }

    /** A guess at or below fridge cold is of a place that is kept cold; of any other the summer is another matter. */
    private static WarmestWeek warmestWeek(Place place, TemperatureSource.FixedGuess guess) {
        return place.summerMaximumCelsius().isEmpty() && guess.celsius() <= ColdRest.COLD_CELSIUS
                ? WarmestWeek.ofYear(new YearlySwing(guess.celsius(), 0, 1), guess.spreadKelvin())
                : WarmestWeek.entered(place.summerMaximumCelsius());
    }

    private static PlaceClimate guessed(
            Place place, TemperatureAhead year, WarmestWeek warmestWeek, long gridFrom, long horizon) {
        Track track = year.track(gridFrom, horizon, STEP_SECONDS);
        return new PlaceClimate(
                place, track, TimeSeries.empty(), List.of(), List.of(), warmestWeek, Long.MAX_VALUE, Long.MIN_VALUE);
    }

    private static PlaceClimate logged(
            Place place, TimeSeries air, YeastLimits limits, long gridFrom, Instant at, long horizon) {
        long now = at.getEpochSecond();
        long first = Math.floorDiv(air.firstTime(), STEP_SECONDS) * STEP_SECONDS;
        long historyFrom = Math.min(first, gridFrom);
        long present =
                Math.max(historyFrom + STEP_SECONDS, Math.floorDiv(now, STEP_SECONDS) * STEP_SECONDS + STEP_SECONDS);
        BottleHistory history = BottleLag.of(air, historyFrom, present, STEP_SECONDS, place.lagHours());
        long learnedUntil = Math.max(first + STEP_SECONDS, Math.min(present, endOf(air)));
        BottleHistory learned = first == historyFrom && learnedUntil == present
                ? history
                : BottleLag.of(air, first, learnedUntil, STEP_SECONDS, place.lagHours());
        Track ahead = TemperatureAhead.from(learned).track(present, horizon, STEP_SECONDS);
        Track bottles = joined(history.track(), ahead, gridFrom);
        List<Span> gaps = new ArrayList<>();
        history.patches().forEach(patch -> gaps.add(patch.span()));
        List<Spell> spells = spells(learned, limits);
        return new PlaceClimate(
                place,
                bottles,
                air,
                List.copyOf(gaps),
                spells,
                WarmestWeek.of(air, now, place.summerMaximumCelsius()),
                air.firstTime(),
                air.lastTime() + STALE_SECONDS);
    }

    /** Frost and stall are two cold limits; a stall is left out where another cold spell says the same. */
    private static List<Spell> spells(BottleHistory history, YeastLimits limits) {
        SpellFinder frost = SpellFinder.of(history, SpellRule.STANDARD.withLimits(FROST_CELSIUS, limits.warmCelsius()));
        List<Spell> spells = new ArrayList<>(frost.spells());
        List<Spell> cold =
                spells.stream().filter(spell -> spell.kind() == Spell.Kind.COLD).toList();
        frost.under(SpellRule.STANDARD.withLimits(limits.stallCelsius(), limits.warmCelsius())).spells().stream()
                .filter(spell -> spell.kind() == Spell.Kind.COLD && spell.cause() == Spell.Cause.LIMIT)
                .filter(stall -> cold.stream().noneMatch(other -> other.span().overlaps(stall.span())))
                .forEach(spells::add);
        spells.sort(Comparator.comparingLong(spell -> spell.span().fromInclusive()));
        return List.copyOf(spells);
    }

    private static long endOf(TimeSeries air) {
        return Math.floorDiv(air.lastTime(), STEP_SECONDS) * STEP_SECONDS + STEP_SECONDS;
    }

    private static Track joined(Track past, Track ahead, long gridFrom) {
        int skip = (int) ((gridFrom - past.timeAt(0)) / STEP_SECONDS);
        int kept = past.size() - skip;
        double[] values = new double[kept + ahead.size()];
        double[] spreads = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            Track from = i < kept ? past : ahead;
            int index = i < kept ? i + skip : i - kept;
            values[i] = from.valueAt(index);
            spreads[i] = from.spreadAt(index);
        }
        return Track.of(gridFrom, STEP_SECONDS, values, spreads);
    }

    /** The same place with other bottle temperatures on the same grid. */
    public PlaceClimate withBottles(Track other) {
        return new PlaceClimate(place, other, air, gaps, spells, warmestWeek, firstKnown, lastKnown);
    }

    /** The warmest week of the twelve months before an instant, which is no later than the climate's own. */
    public WarmestWeek warmestWeekBefore(Instant when) {
        return air.isEmpty() ? warmestWeek : WarmestWeek.of(air, when.getEpochSecond(), place.summerMaximumCelsius());
    }

    /** Whether bottles that stood here from one instant to another could not tell this climate from the other one. */
    public boolean isAlike(PlaceClimate other, long fromInclusive, long untilInclusive) {
        Span stretch = new Span(fromInclusive, untilInclusive + 1);
        long year = fromInclusive - YEAR_SECONDS;
        return place.equals(other.place)
                && knownSeconds(fromInclusive, untilInclusive) == other.knownSeconds(fromInclusive, untilInclusive)
                && within(stretch, gaps, gap -> gap).equals(within(stretch, other.gaps, gap -> gap))
                && within(stretch, spells, Spell::span).equals(within(stretch, other.spells, Spell::span))
                && air.between(year, untilInclusive + 1).equals(other.air.between(year, untilInclusive + 1))
                && bottles.isAlike(other.bottles, fromInclusive, untilInclusive);
    }

    private static <T> List<T> within(Span stretch, List<T> all, Function<T, Span> spanOf) {
        return all.stream().filter(each -> spanOf.apply(each).overlaps(stretch)).toList();
    }

    /** Seconds of a stretch in which the log tells the temperature. */
    long knownSeconds(long fromInclusive, long untilExclusive) {
        long from = Math.max(fromInclusive, firstKnown);
        long until = Math.min(untilExclusive, lastKnown);
        if (until <= from) {
            return 0;
        }
        long known = until - from;
        for (Span gap : gaps) {
            known -= Math.max(0, Math.min(gap.untilExclusive(), until) - Math.max(gap.fromInclusive(), from));
        }
        return Math.max(0, known);
    }

    public PlaceOutlook outlook(Instant at) {
        int now = bottles.indexAt(at.getEpochSecond());
        int day = 86_400 / STEP_SECONDS;
        double today = mean(now - day + 1, now);
        double before = mean(now - 4 * day + 1, now - 3 * day);
        boolean measured = at.getEpochSecond() <= lastKnown;
        return new PlaceOutlook(
                place, bottles.valueAt(now), now < 4 * day ? 0 : today - before, measured, air, bottles, gaps);
    }

    private double mean(int from, int until) {
        double sum = 0;
        int count = 0;
        for (int i = Math.max(0, from); i <= Math.max(0, until); i++) {
            sum += bottles.valueAt(i);
            count++;
        }
        return sum / count;
    }
}
