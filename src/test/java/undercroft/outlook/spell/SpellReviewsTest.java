package undercroft.outlook.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.SpellSamples.air;
import static undercroft.outlook.SpellSamples.cellar;
import static undercroft.outlook.SpellSamples.day;
import static undercroft.outlook.SpellSamples.isWithin;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.outlook.climate.AirLogs;
import undercroft.outlook.lot.Alert;
import undercroft.series.TimeSeries;

class SpellReviewsTest {
    private static final TimeSeries HOT_WEEK = air(80, time -> isWithin(time, 50, 57) ? 34 : 20);

    private static List<SpellReview> spells(Cellar cellar, TimeSeries air, double atDay) {
        return Outlooks.of(cellar, Map.of("room", air), day(atDay)).spells();
    }

    @Test
    void aHotWeekIsOneSpellAndWearsTheGlass() {
        List<SpellReview> spells = spells(cellar(120, "room"), HOT_WEEK, 80);
        assertEquals(1, spells.size());
        SpellImpact impact = spells.get(0).impacts().get(0);
        assertTrue(spells.get(0).certain());
        assertTrue(impact.exposure().memoryAfterBar().high()
                > impact.exposure().memoryBeforeBar().high());
        // Open-headspace charts of the trade: 2.4 vol stand at 1.9 bar at 20 °C and near 2.9 at 34 °C (from memory).
        Map<String, TimeSeries> calm = Map.of("room", air(80, time -> 20));
        double usual = Outlooks.of(cellar(120, "room"), calm, day(80))
                .batch("ale")
                .mainLot()
                .pressure()
                .peakPast()
                .median();
        assertTrue(impact.peakGaugeBar().median() > 1.25 * usual, impact.peakGaugeBar() + " after " + usual);
        assertTrue(impact.shelfDaysCost() > 5, "keeping days " + impact.shelfDaysCost());
    }

    @Test
    void hoursOverTheLimitAreThoseOfTheHeatNotOfTheTrajectory() {
        // Four days of heat by day only: twelve hours each, so at most two days in all can be over a limit passed by
        // day.
        TimeSeries air = air(300, time -> {
            if (!isWithin(time, 250, 254)) {
                return 15;
            }
            return Math.floorMod(time, 86_400) < 43_200 ? 44 : 15;
        });
        SpellImpact impact = spells(cellar(190, "room"), air, 300).stream()
                .filter(SpellReview::warm)
                .findFirst()
                .orElseThrow()
                .impacts()
                .get(0);
        assertTrue(impact.hoursOverWorkingPressure() > 8, "hours " + impact.hoursOverWorkingPressure());
        assertTrue(impact.hoursOverWorkingPressure() < 72, "hours " + impact.hoursOverWorkingPressure());
    }

    @Test
    void anOverprimedBatchIsNotToBeTouchedWhileItIsHot() {
        SpellImpact impact =
                spells(cellar(240, "room"), HOT_WEEK, 56).get(0).impacts().get(0);
        assertEquals(Alert.ACT, impact.alert());
        assertEquals(SpellImpact.Advice.COOL_BEFORE_TOUCHING, impact.advice());
        assertTrue(impact.hoursOverWorkingPressure() > 24);
    }

    @Test
    void aSpellAcrossAGapIsSaidToBeUncertain() {
        TimeSeries air = air(80, time -> {
            if (isWithin(time, 52, 55)) {
                return Double.NaN;
            }
            return isWithin(time, 50, 57) ? 30 : 20;
        });
        SpellReview spell = spells(cellar(120, "room"), air, 80).get(0);
        assertFalse(spell.certain());
        assertTrue(spell.impacts().get(0).alert().compareTo(Alert.WATCH) >= 0);
    }

    @Test
    void aLagerPlaceHasALowerLimitThanAnAlePlace() {
        // A room that is at 29 °C from the beginning is used to it; only the limit speaks. Limits: this tool's own.
        TimeSeries warm = air(40, time -> 29);
        assertEquals(List.of(), spells(cellar(120, "room"), warm, 40));
        SpellReview lager =
                spells(cellar(120, "room", YeastStrain.LAGER), warm, 40).get(0);
        assertTrue(lager.warm());
    }

    @Test
    void aPlaceTooColdForYeastAtWorkIsASpellOnlyWhileItWorks() {
        TimeSeries cold = air(40, time -> 8);
        SpellReview stall = spells(cellar(120, "room"), cold, 40).get(0);
        assertFalse(stall.warm());
        TimeSeries coldLater = air(150, time -> isWithin(time, 60, 150) ? 8 : 21);
        assertTrue(spells(cellar(120, "room"), coldLater, 150).stream().allMatch(SpellReview::warm));
    }

    @Test
    void theNightsTheClocksChangeAreNoGapAndNoSpell() {
        // Last Sunday of October: Directive 2000/84/EC. Wall clocks show two o'clock twice, the log goes on.
        TimeSeries air = air(190, time -> 18 + 2 * Math.sin(2 * Math.PI * time / 86_400));
        CellarOutlook outlook = Outlooks.of(cellar(120, "room"), Map.of("room", air), day(190));
        assertEquals(List.of(), outlook.spells());
        assertEquals(1, outlook.batch("ale").mainLot().temperature().coverage(), 0.01);
    }

    @Test
    void keptLogsGiveTheSameOutlookAsFreshOnes() {
        TimeSeries air = air(80, time -> isWithin(time, 59.9, 60.02) ? 60 : HOT_WEEK.interpolated(time));
        AirLogs logs = new AirLogs();
        ShelfMemory memory = new ShelfMemory();
        for (double at : new double[] {80, 59.95, 60.2, 56, 80}) {
            Map<String, TimeSeries> known = Map.of("room", air);
            TimeSeries fresh =
                    new AirLogs().until("room", air.between(0, day(at).getEpochSecond() + 1), Long.MAX_VALUE);
            assertEquals(fresh, logs.until("room", air, day(at).getEpochSecond()), "day " + at);
            CellarOutlook kept = Outlooks.of(cellar(120, "room"), known, day(at), List.of(), memory);
            CellarOutlook plain = Outlooks.of(cellar(120, "room"), known, day(at));
            assertEquals(
                    plain.batch("ale").mainLot().pressure().peakAhead(),
                    kept.batch("ale").mainLot().pressure().peakAhead());
        }
    }

    @Test
    void aLogThatGrowsIsCleanedAsIfItHadAlwaysBeenSo() {
        TimeSeries air = air(80, time -> isWithin(time, 59.9, 60.02) ? 60 : HOT_WEEK.interpolated(time));
        AirLogs logs = new AirLogs();
        for (double until : new double[] {59.8, 59.95, 59.97, 60.03, 60.2, 60.2, 75, 59.96, 80}) {
            TimeSeries grown = air.between(0, day(until).getEpochSecond() + 1);
            TimeSeries fresh = new AirLogs().until("room", grown, Long.MAX_VALUE);
            assertEquals(fresh, logs.until("room", grown, Long.MAX_VALUE), "day " + until);
        }
    }
}
