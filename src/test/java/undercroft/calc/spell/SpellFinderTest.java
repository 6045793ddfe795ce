package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import undercroft.calc.spell.Spell.Cause;
import undercroft.calc.spell.Spell.Kind;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/** The rule is this tool's own, so these are tests of what it was made to do, not against a published record. */
class SpellFinderTest {
    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;

    @Property(tries = 40, seed = "20260104")
    void aYearOfSeasonDaysAndNoiseHasNoSpell(@ForAll long seed) {
        Random random = new Random(seed);
        TimeSeries air = hourly(
                365,
                hour -> 16
                        + 5 * Math.sin(2 * Math.PI * hour / (365 * 24))
                        + 3 * Math.sin(2 * Math.PI * hour / 24)
                        + random.nextGaussian());
        assertEquals(List.of(), find(air, 0, 365, 6));
    }

    @Test
    void threeDaysFiveKelvinsUpAreExactlyOneSpell() {
        TimeSeries air = hourly(90, hour -> 18 + Math.sin(2 * Math.PI * hour / 24.0) + (within(hour, 50, 53) ? 5 : 0));
        List<Spell> spells = find(air, 0, 90, 3);
        assertEquals(1, spells.size());
        Spell spell = spells.get(0);
        assertEquals(Kind.WARM, spell.kind());
        assertEquals(Cause.UNUSUAL, spell.cause());
        assertTrue(spell.certain());
        assertEquals(50.0 * DAY, (double) spell.span().fromInclusive(), 8 * HOUR);
        assertEquals(53.0 * DAY, (double) spell.span().untilExclusive(), 12 * HOUR);
        assertEquals(18, spell.baselineCelsius(), 0.3);
        assertEquals(15, spell.kelvinDays(), 1.5);
        assertEquals(23.8, spell.peakCelsius(), 0.3);
    }

    @Test
    void threeDaysFiveKelvinsDownAreTheMirror() {
        TimeSeries warm = hourly(90, hour -> 18 + (within(hour, 50, 53) ? 5 : 0));
        TimeSeries cold = hourly(90, hour -> 18 - (within(hour, 50, 53) ? 5 : 0));
        Spell up = find(warm, 0, 90, 3).get(0);
        Spell down = find(cold, 0, 90, 3).get(0);
        assertEquals(Kind.COLD, down.kind());
        assertEquals(up.span(), down.span());
        assertEquals(up.kelvinDays(), down.kelvinDays(), 1e-9);
        assertEquals(36, up.peakCelsius() + down.peakCelsius(), 1e-9);
    }

    @Test
    void aTenMinuteSpikeOfFortyDegreesIsNoSpell() {
        TimeSeries.Builder air = new TimeSeries.Builder();
        for (int minute = 0; minute < 60 * 1440; minute += 5) {
            air.add(60L * minute, minute >= 60_000 && minute <= 60_010 ? 40 : 18);
        }
        assertEquals(List.of(), find(air.build(), 0, 60, 3));
        assertEquals(List.of(), find(CleanSeries.of(air.build()).series(), 0, 60, 3));
    }

    @Test
    void aMoveToAWarmerRoomIsTheNewNormalInTwoWeeks() {
        TimeSeries air = hourly(120, hour -> within(hour, 60, 120) ? 22 : 16);
        List<Spell> spells = find(air, 0, 120, 3);
        assertEquals(1, spells.size());
        assertEquals(14, spells.get(0).days(), 1);
    }

    @Test
    void aSpellAcrossAGapIsUnknown() {
        TimeSeries all = hourly(90, hour -> 18 + (within(hour, 50, 58) ? 6 : 0));
        TimeSeries air = without(all, 52, 56);
        List<Spell> spells = find(air, 0, 90, 3);
        assertEquals(1, spells.size());
        assertFalse(spells.get(0).certain());
        assertEquals(8, spells.get(0).days(), 0.6);
    }

    @Test
    void aSpellWhoseEndNobodySawIsUnknown() {
        TimeSeries air = without(hourly(90, hour -> 18 + (within(hour, 50, 54) ? 6 : 0)), 52, 57);
        List<Spell> spells = find(air, 0, 90, 3);
        assertEquals(1, spells.size());
        assertFalse(spells.get(0).certain());
    }

    @Test
    void aGapFarFromASpellLeavesItCertain() {
        TimeSeries air = without(hourly(90, hour -> 18 + (within(hour, 50, 54) ? 6 : 0)), 60, 65);
        assertTrue(find(air, 0, 90, 3).get(0).certain());
    }

    @Test
    void aDayWithoutReadingsInsideASpellMakesItUncertain() {
        TimeSeries air = without(hourly(90, hour -> 18 + (within(hour, 50, 54) ? 6 : 0)), 51, 52);
        List<Spell> spells = find(air, 0, 90, 3);
        assertEquals(1, spells.size());
        assertFalse(spells.get(0).certain());
    }

    @Test
    void aSpellThatStillGoesOnEndsWithTheHistory() {
        TimeSeries air = hourly(60, hour -> within(hour, 57, 61) ? 26 : 18);
        List<Spell> spells = find(air, 0, 60, 3);
        assertEquals(1, spells.size());
        assertEquals(60L * DAY, spells.get(0).span().untilExclusive());
    }

    @Test
    void anAbsoluteLimitCountsEvenWhereItIsUsual() {
        TimeSeries air = hourly(60, hour -> 31);
        List<Spell> spells = SpellFinder.find(history(air, 0, 60, 3), SpellRule.STANDARD.withLimits(5, 30));
        assertEquals(1, spells.size());
        assertEquals(Cause.LIMIT, spells.get(0).cause());
        assertEquals(30, spells.get(0).baselineCelsius());
        assertEquals(60, spells.get(0).kelvinDays(), 1e-6);
    }

    @Test
    void aLimitDoesNotRepeatAnUnusualSpell() {
        TimeSeries air = hourly(90, hour -> 20 + (within(hour, 50, 54) ? 12 : 0));
        List<Spell> spells = SpellFinder.find(history(air, 0, 90, 3), SpellRule.STANDARD.withLimits(5, 30));
        assertEquals(1, spells.size());
        assertEquals(Cause.UNUSUAL, spells.get(0).cause());
    }

    @Test
    void twoDaysOfReadingsSayNothing() {
        assertEquals(List.of(), find(hourly(2, hour -> hour < 20 ? 10 : 30), 0, 2, 3));
        assertEquals(List.of(), SpellFinder.find(history(TimeSeries.empty(), 0, 40, 3), SpellRule.STANDARD));
    }

    @Property(tries = 60, seed = "20260104")
    void shiftingEveryReadingShiftsEverySpell(@ForAll long seed, @ForAll @DoubleRange(min = -5, max = 5) double shift) {
        Track track = wandering(seed);
        double[] moved = new double[track.size()];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = track.valueAt(i) + shift;
        }
        List<Spell> spells = SpellFinder.find(BottleHistory.known(track), SpellRule.STANDARD);
        List<Spell> others = SpellFinder.find(
                BottleHistory.known(Track.of(track.timeAt(0), HOUR, moved, new double[moved.length])),
                SpellRule.STANDARD);
        assertEquals(spells.size(), others.size());
        for (int i = 0; i < spells.size(); i++) {
            assertEquals(spells.get(i).span(), others.get(i).span());
            assertEquals(spells.get(i).peakCelsius() + shift, others.get(i).peakCelsius(), 1e-9);
        }
    }

    @Property(tries = 60, seed = "20260104")
    void spellsOfOneKindNeverOverlapAndAreHotterThanUsual(@ForAll long seed) {
        List<Spell> spells = SpellFinder.find(BottleHistory.known(wandering(seed)), SpellRule.STANDARD);
        for (int i = 0; i < spells.size(); i++) {
            Spell spell = spells.get(i);
            double off = spell.peakCelsius() - spell.baselineCelsius();
            assertTrue(spell.kind() == Kind.WARM ? off >= 3 : off <= -3);
            assertTrue(spell.kelvinDays() >= 3 - 1e-9);
            for (Spell other : spells.subList(i + 1, spells.size())) {
                assertFalse(spell.span().overlaps(other.span()));
            }
        }
    }

    /** What was found once stays found when more readings come in. */
    @Property(tries = 40, seed = "20260104")
    void laterReadingsChangeNoFinishedSpell(@ForAll long seed, @ForAll @IntRange(min = 30, max = 100) int days) {
        Track track = wandering(seed);
        double[] early = new double[days * 24];
        for (int i = 0; i < early.length; i++) {
            early[i] = track.valueAt(i);
        }
        long end = track.timeAt(early.length);
        List<Spell> before = SpellFinder.find(
                BottleHistory.known(Track.of(track.timeAt(0), HOUR, early, new double[early.length])),
                SpellRule.STANDARD);
        List<Spell> after = SpellFinder.find(BottleHistory.known(track), SpellRule.STANDARD);
        for (Spell spell : before) {
            if (spell.span().untilExclusive() < end - 12 * HOUR) {
                assertTrue(after.contains(spell));
            }
        }
    }

    private static Track wandering(long seed) {
        Random random = new Random(seed);
        double[] values = new double[120 * 24];
        double off = 0;
        for (int i = 0; i < values.length; i++) {
            off = 0.99 * off + 0.4 * random.nextGaussian();
            values[i] = 17 + off;
        }
        return Track.of(0, HOUR, values, new double[values.length]);
    }

    private static boolean within(int hour, int fromDay, int untilDay) {
        return hour >= fromDay * 24 && hour < untilDay * 24;
    }

    private static List<Spell> find(TimeSeries air, int fromDay, int untilDay, double lag) {
        return SpellFinder.find(history(air, fromDay, untilDay, lag), SpellRule.STANDARD);
    }

    private static BottleHistory history(TimeSeries air, int fromDay, int untilDay, double lag) {
        return BottleLag.of(air, (long) fromDay * DAY, (long) untilDay * DAY, HOUR, lag);
    }

    private static TimeSeries hourly(int days, IntToDoubleFunction celsius) {
        TimeSeries.Builder builder = new TimeSeries.Builder();
        for (int hour = 0; hour <= days * 24; hour++) {
            builder.add((long) hour * HOUR, celsius.applyAsDouble(hour));
        }
        return builder.build();
    }

    private static TimeSeries without(TimeSeries series, int fromDay, int untilDay) {
        return series.between(0, (long) fromDay * DAY)
                .mergedWith(series.between((long) untilDay * DAY, Long.MAX_VALUE));
    }
}
