package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import undercroft.calc.conditioning.Stuck.Level;
import undercroft.catalogue.YeastStrain;
import undercroft.series.Track;

class StuckTest {
    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;
    private static final Track ROOM = Track.constant(0, HOUR, 24 * 60, 21);
    private static final Track FRIDGE = Track.constant(0, HOUR, 24 * 60, 4);

    /** Ale yeast is said to stop at 13.5 to 14 % ABV: common practice, no source. */
    @Test
    void aBeerAsStrongAsItsYeastCanStandIsStuck() {
        assertEquals(EnumSet.of(Stuck.BEYOND_ALCOHOL_LIMIT), Stuck.fromTheStart(YeastStrain.ALE, 13.5, 5));
        assertTrue(Stuck.fromTheStart(YeastStrain.ALE, 13.4, 5).isEmpty());
        assertTrue(Stuck.fromTheStart(YeastStrain.SPARKLING_WINE, 14, 5).isEmpty());
    }

    @Test
    void withoutSugarNothingComes() {
        assertEquals(EnumSet.of(Stuck.NO_SUGAR), Stuck.fromTheStart(YeastStrain.ALE, 5, 0));
        assertEquals(2, Stuck.fromTheStart(YeastStrain.LAGER, 14, 0.05).size());
    }

    @Test
    void readingsThatStayWhereTheyAreInAWarmRoomStandStill() {
        List<Level> levels = List.of(level(3, 1.9), level(8, 2.4), level(12, 2.45), level(16, 2.4));
        assertEquals(OptionalLong.of(8L * DAY), Stuck.stillSince(levels, YeastStrain.ALE, ROOM, 4.2));
    }

    @Test
    void readingsThatRiseOrAreWhereTheyShouldEndDoNot() {
        List<Level> rising = List.of(level(4, 2.0), level(8, 2.9), level(12, 3.7));
        assertTrue(Stuck.stillSince(rising, YeastStrain.ALE, ROOM, 4.8).isEmpty());
        List<Level> finished = List.of(level(20, 4.6), level(28, 4.65));
        assertTrue(Stuck.stillSince(finished, YeastStrain.ALE, ROOM, 4.5).isEmpty());
        assertTrue(Stuck.stillSince(List.of(level(9, 2)), YeastStrain.ALE, ROOM, 4.5)
                .isEmpty());
    }

    /** In a fridge ale yeast all but rests, so that nothing can be told from readings alike. */
    @Test
    void readingsAlikeInTheColdOrADayApartSayNothing() {
        List<Level> levels = List.of(level(8, 2.4), level(18, 2.4));
        assertTrue(Stuck.stillSince(levels, YeastStrain.ALE, ROOM, 4.2).isPresent());
        assertTrue(Stuck.stillSince(levels, YeastStrain.ALE, FRIDGE, 4.2).isEmpty());
        List<Level> close = List.of(level(8, 2.4), level(9, 2.4));
        assertTrue(Stuck.stillSince(close, YeastStrain.ALE, ROOM, 4.2).isEmpty());
    }

    private static Level level(int day, double grams) {
        return new Level((long) day * DAY, grams, 0.15);
    }
}
