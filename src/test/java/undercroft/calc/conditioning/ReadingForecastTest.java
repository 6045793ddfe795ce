package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;
import static undercroft.calc.conditioning.ReferenceBatch.gauge;
import static undercroft.calc.conditioning.ReferenceBatch.wide;

import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Interval;

/** What is foretold of readings and what they would teach, against the update itself. */
class ReadingForecastTest {
    private static final int DAY_READ = 60;
    private static final long THEN = CAPPED + DAY_READ * DAY;

    private final ReferenceBatch batch = wide(0.05);
    private final ConditioningEnsemble prior = batch.after(List.of());

    private LotReadings one(Observation reading) {
        return batch.lot(List.of(reading), 12);
    }

    private static Observation by(int bottle, int instrument) {
        return new Observation.GaugePressure(THEN, 1, bottle, instrument, 20);
    }

    /** The plot of pressure takes another way to the same bottle; a gauge adds its own error and its bottle's dose. */
    @Test
    void aGaugeIsForetoldWhereThePressureIs() {
        Interval foretold = ReadingForecast.of(prior, one(by(0, 0))).get(0);
        Interval bar = batch.figures(prior).bar();
        assertEquals(bar.median(), foretold.median(), 0.12);
        assertTrue(foretold.high() - foretold.low() > bar.high() - bar.low(), foretold + " about " + bar);
    }

    /** By hand: all of 6.3 g/L of hexose gone is −0.47 × 6.3 + 0.38 × 6.3 = −0.57 points where the sugar came after. */
    @Test
    void aGravityHardlyFallsWhereNothingIsHidden() {
        Interval points = ReadingForecast.of(
                        ReferenceBatch.narrow(0).after(List.of()),
                        one(new Observation.ApparentGravity(THEN, 1.010, 1.010, false)))
                .get(0);
        assertEquals(-0.57, points.median(), 0.1);
    }

    /** The members weighed anew against members drawn anew for each outcome. */
    @Test
    void whatAGaugeTeachesIsWhatTheUpdateLearns() {
        double[] places = {0.1, 0.3, 0.5, 0.7, 0.9};
        Interval foretold = ReadingForecast.of(prior, one(by(0, 0))).get(0);
        double sum = 0;
        for (double place : places) {
            double z = (place - 0.5) / 0.4;
            double bar = place < 0.5
                    ? foretold.median() + z * (foretold.median() - foretold.low()) * 0.78
                    : foretold.median() + z * (foretold.high() - foretold.median()) * 0.78;
            Interval atEnd = batch.figures(List.of(gauge(DAY_READ, bar, 0))).atEnd();
            sum += atEnd.high() - atEnd.low();
        }
        double told = ReadingForecast.volumesWideAfter(prior, one(by(0, 0)));
        assertEquals(sum / places.length, told, 0.2 * told);
        assertTrue(
                told < 0.75 * ReadingForecast.volumesWide(prior), told + " of " + ReadingForecast.volumesWide(prior));
    }

    @Test
    void theSameGaugeAgainTeachesLessThanAnother() {
        ConditioningEnsemble known = batch.after(List.of(gauge(DAY_READ - 1, 2.6, 0)));
        double again = ReadingForecast.volumesWideAfter(known, one(by(0, 0)));
        double another = ReadingForecast.volumesWideAfter(known, one(by(1, 1)));
        assertTrue(another < again, another + " and " + again);
    }

    /** With a few per cent of hidden extract or of slips of the dose the 95 % value stands on an edge, and a range may widen. */
    @Test
    void noReadingIsExpectedToMakeTheRangeWiderWhereNothingIsHiddenAndNoDoseSlipped() {
        ReferenceBatch plain = ReferenceBatch.narrow(0);
        for (ConditioningEnsemble each : List.of(
                plain.after(List.of()),
                plain.after(List.of(gauge(20, 2.4, 0))),
                plain.after(List.of(gauge(20, 2.6, 0), gauge(40, 2.9, 0))))) {
            double now = ReadingForecast.volumesWide(each);
            for (Observation reading : List.of(
                    by(0, 0),
                    new Observation.Squeeze(THEN, BottleFeel.FIRM),
                    new Observation.Opened(THEN, PerceivedCarbonation.SOFT),
                    new Observation.ApparentGravity(THEN, 1.010, 1.010, false))) {
                double after = ReadingForecast.volumesWideAfter(each, one(reading));
                assertTrue(after < 1.03 * now, reading + ": " + now + " to " + after);
            }
        }
    }
}
