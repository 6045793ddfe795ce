package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.calc.gas.PressureMemory;
import undercroft.catalogue.PerceivedCarbonation;

/** Check values worked out for this project, unpublished. */
class ReadingLawTest {
    @Test
    void aGaugeIsReadWithinATwelfthOfABarAndFourPerCent() {
        assertEquals(0.16473, ReadingLaw.gaugeSpread(2.6), 5e-6);
        assertEquals(-6.6357, ReadingLaw.logGauge(3.3, 2.6), 5e-5);
        assertEquals(-5.1930, ReadingLaw.logGauge(1.0, 2.6), 5e-5);
        assertEquals(ReadingLaw.logGauge(10, 6), ReadingLaw.logGauge(15, 6), "a gauge cannot say more than very much");
    }

    /** Read values of −1 to 15 bar have a probability of 1 in all, but for what lies beyond. */
    @Test
    void densitiesAddUpToOne() {
        assertEquals(1, integral(y -> ReadingLaw.logGauge(y, 2.6), -1, 9.9), 0.003);
        assertEquals(1, integral(y -> ReadingLaw.logGravity(y, -2), -13.9, 8), 0.003);
    }

    private static double integral(DoubleUnaryOperator log, double from, double until) {
        double sum = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            sum += Math.exp(log.applyAsDouble(from + (i + 0.5) * (until - from) / steps)) * (until - from) / steps;
        }
        return sum;
    }

    /**
     * A reading higher than another favours members that expect more: ln L(y2, mu2) + ln L(y1, mu1) is at least as much as
     * crosswise, wherever the members do not stand so far above the reading that a leak explains it (total positivity).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1.5, 2.6, 4, 6, 8})
    void aHigherReadingFavoursHigherPressures(double expected) {
        for (double read = expected - 2.4 * ReadingLaw.gaugeSpread(expected); read < 12; read += 0.05) {
            double lower = expected - 0.05;
            double here = ReadingLaw.logGauge(read + 0.05, expected) - ReadingLaw.logGauge(read, expected);
            double below = ReadingLaw.logGauge(read + 0.05, lower) - ReadingLaw.logGauge(read, lower);
            assertTrue(here >= below - 1e-9, "at " + read + " bar");
        }
    }

    @Test
    void wordsShareAllTheirChance() {
        double sum = 0;
        for (PerceivedCarbonation word : PerceivedCarbonation.values()) {
            sum += Math.exp(ReadingLaw.logWord(2.4, ReadingLaw.LOGIT_VOLUMES, word.fromVolumes(), word.untilVolumes()));
        }
        assertEquals(1, sum, 1e-12);
    }

    /** The share of longnecks burst by a history told as one pressure held for a minute. */
    @ParameterizedTest
    @CsvSource({"4.75, 0.0012", "6, 0.0054", "8, 0.0144", "10, 0.038", "12, 0.190"})
    void glassBurstsByWhatItHasBorne(double heldForAMinute, double share) {
        GlassStrength longneck = new GlassStrength(12, 0.05);
        assertEquals(share, longneck.shareBurst(heldForAMinute, 0, 0), 0.04 * share);
        assertEquals(0, longneck.shareBurst(0, 0, 0));
    }

    /** Twenty-four days at 2.6 bar are worth 5.00 bar held for a minute: (24 × 1440)^(1/16) = 1.92 times as much. */
    @Test
    void aConstantHistoryIsNotForgotten() {
        double held = 0;
        for (int day = 0; day < 24; day++) {
            held = PressureMemory.after(held, 2.6, 86_400);
        }
        assertEquals(5.00, held, 0.005);
        assertEquals(5.00, PressureMemory.after(0, 2.6, 24 * 86_400), 0.005);
    }

    /** Twelve bar for a minute is the grade; the middle of what is made bears 14. */
    @Test
    void theMiddleOfAMakeBearsMoreThanItsGrade() {
        assertEquals(14, new GlassStrength(12, 0.05).soundMedianBar(0), 0.05);
    }
}
