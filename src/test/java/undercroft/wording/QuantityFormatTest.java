package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import undercroft.quantity.Interval;
import undercroft.quantity.UnitSystem;

class QuantityFormatTest {
    private static final double FAHRENHEIT_PER_KELVIN = 1.8;
    /** NIST Special Publication 811 (2008), appendix B.8: 1 psi = 6.894 757 kPa. */
    private static final double BAR_PER_PSI = 0.06894757;
    /** The published factor has seven digits. */
    private static final double DIGITS = 1e-6;

    private final Messages english = Messages.in(Locale.ENGLISH);
    private final QuantityFormat metric = QuantityFormat.of(english, UnitSystem.METRIC, ZoneOffset.UTC);
    private final QuantityFormat us = QuantityFormat.of(english, UnitSystem.US, ZoneOffset.UTC);

    private static double figure(String text) {
        return Double.parseDouble(text.substring(0, text.indexOf(' ')));
    }

    @Property(seed = "20260104")
    void aTemperatureLimitIsNeverShownAboveItself(@ForAll @DoubleRange(min = -20, max = 70) double celsius) {
        assertTrue(figure(metric.celsiusLimit(celsius)) <= celsius + 1e-9);
        double fahrenheit = figure(us.celsiusLimit(celsius));
        assertTrue((fahrenheit - 32) / FAHRENHEIT_PER_KELVIN <= celsius + 1e-9);
        assertTrue((fahrenheit + 1 - 32) / FAHRENHEIT_PER_KELVIN > celsius - 1e-9, "the whole degree just below");
    }

    @Property(seed = "20260104")
    void aPressureLimitIsNeverShownAboveItselfNorAWorstCaseBelow(@ForAll @DoubleRange(min = 0, max = 30) double bar) {
        assertTrue(figure(metric.barLimit(bar)) <= bar + 1e-9);
        assertTrue(figure(metric.barWorst(bar)) >= bar - 1e-9);
        assertTrue(figure(us.barLimit(bar)) * BAR_PER_PSI <= bar * (1 + DIGITS));
        assertTrue(figure(us.barWorst(bar)) * BAR_PER_PSI >= bar * (1 - DIGITS));
    }

    @Property(seed = "20260104")
    void aRangeHoldsBothItsEnds(@ForAll @DoubleRange(min = 0, max = 5) double low) {
        String text = metric.range(Interval.of(low, low + 0.01, low + 0.02), 1);
        int to = text.indexOf(" to ");
        assertTrue(Double.parseDouble(to < 0 ? text : text.substring(0, to)) <= low + 1e-9);
        assertTrue(Double.parseDouble(to < 0 ? text : text.substring(to + 4)) >= low + 0.02 - 1e-9);
    }

    @Test
    void aLimitGivenInAWholeNumberOfTheUnitShownKeepsIt() {
        for (int psi = 1; psi <= 200; psi++) {
            assertEquals(
                    psi + " psi",
                    us.barLimit(undercroft.quantity.Pressure.ofPsi(psi).bar()));
            assertEquals(
                    psi + " psi",
                    us.barWorst(undercroft.quantity.Pressure.ofPsi(psi).bar()));
        }
        assertEquals("2.3 bar", metric.barLimit(2.3));
    }

    /** 31.9 °C is 89.42 °F, and 31 °C is 87.8 °F: flooring before the conversion would show 87 or even 88. */
    @Test
    void aLimitIsConvertedBeforeItIsRounded() {
        assertEquals("31 °C", metric.celsiusLimit(31.9));
        assertEquals("89 °F", us.celsiusLimit(31.9));
        assertEquals("87 °F", us.celsiusLimit(31));
    }

    @Test
    void everyKindHasItsUnitInBothSystems() {
        assertEquals("17.2 °C", metric.celsius(17.2));
        assertEquals("63 °F", us.celsius(17.2));
        assertEquals("3.0 °C", metric.kelvin(3));
        assertEquals("5 °F", us.kelvin(3));
        assertEquals("0.0 °C", metric.celsius(-0.04), "no minus zero");
        assertEquals("19.0 L", metric.litres(19));
        assertEquals("330 mL", metric.litres(0.33));
        assertEquals("5.02 gal", us.litres(19));
        assertEquals("11.2 fl oz", us.litres(0.33));
        assertEquals("118 g", metric.grams(118));
        assertEquals("4.2 g", metric.grams(4.2));
        assertEquals("4.2 oz", us.grams(118));
        assertEquals("2.2 bar (2.0 to 2.6)", metric.bars(Interval.of(2.04, 2.2, 2.51)));
        assertEquals("2.0 to 2.6 bar", metric.barRange(Interval.of(2.04, 2.2, 2.51)));
        assertEquals("29 to 37 psi", us.barRange(Interval.of(2.04, 2.2, 2.51)));
    }

    @Test
    void aChanceIsCertainOnlyWhereItIs() {
        assertEquals("57 %", metric.percent(0.574));
        assertEquals("99 %", metric.percent(0.998));
        assertEquals("100 %", metric.percent(1));
        assertEquals("1 %", metric.percent(0.001));
        assertEquals("0 %", metric.percent(0));
    }

    @Test
    void whatIsTooUncertainForDigitsHasNone() {
        assertEquals("minutes to hours", metric.timeOrders(0.5, 8));
        assertEquals("weeks", metric.timeOrders(400, 500));
        assertEquals("never", metric.timeOrders(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
    }

    @Test
    void aHeatLimitIsToldWhereverItLies() {
        assertEquals("31 °C", metric.heatLimit(31.9));
        assertEquals("89 °F", us.heatLimit(31.9));
        assertEquals("above 60 °C (estimate)", metric.heatLimit(Double.POSITIVE_INFINITY));
        assertEquals("above 140 °F (estimate)", us.heatLimit(Double.POSITIVE_INFINITY));
        assertEquals("passed even when cold", metric.heatLimit(-1));
    }

    @Test
    void aDayIsSeenFromADayOnTheCellarsClock() {
        QuantityFormat vienna = QuantityFormat.of(english, UnitSystem.METRIC, ZoneId.of("Europe/Vienna"));
        Instant now = Instant.parse("2026-11-25T17:00:00Z");
        assertEquals("now", vienna.when(now, now));
        assertEquals("today 23:59", vienna.when(Instant.parse("2026-11-25T22:59:00Z"), now));
        assertEquals("tomorrow 00:01", vienna.when(Instant.parse("2026-11-25T23:01:00Z"), now));
        assertEquals("Saturday 18:00", vienna.when(Instant.parse("2026-11-28T17:00:00Z"), now));
        assertEquals("12 December", vienna.when(Instant.parse("2026-12-12T17:00:00Z"), now));
        assertEquals("12 January 2027", vienna.when(Instant.parse("2027-01-12T17:00:00Z"), now));
        assertEquals(
                "8 to 17 August",
                vienna.days(Instant.parse("2026-08-08T10:00:00Z"), Instant.parse("2026-08-17T10:00:00Z"), now));
        assertEquals("Wednesday 25 November 2026, 18:00", vienna.full(now));
    }
}
