package undercroft.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.TemperatureUnit;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

class EarTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final long T = NOON.getEpochSecond();

    private final Ear ear = new Ear("Loft", new FollowedTopic("loft", "", TemperatureUnit.CELSIUS, -10, 45), NOON);

    private void hear(long second, Object value) {
        ear.hear(String.valueOf(value).getBytes(StandardCharsets.UTF_8), false, NOON.plusSeconds(second));
    }

    private TimeSeries at(long second) {
        return ear.samples(NOON.plusSeconds(second), false);
    }

    @Test
    void aMinuteIsItsMedianAndAnExtremeThatLastsIsASampleOfItsOwn() {
        double[] values = {18.0, 18.1, 18.2, 20.4, 20.5, 20.4, 18.1, 18.0, 18.1};
        for (int i = 0; i < values.length; i++) {
            hear(5L * i, values[i]);
        }
        assertTrue(at(64).isEmpty(), "a message may be under way");
        // By hand: sorted, the fifth of nine is 18.1; 20.5 at 20 s lies 2.4 K off, the lowest 0.1 K.
        assertEquals(TimeSeries.of(new long[] {T + 20, T + 30}, new double[] {20.5, 18.1}), at(65));
        ear.kept(NOON.plusSeconds(65));
        assertTrue(at(200).isEmpty(), "handed on once");
    }

    @Test
    void aSpikeIsJudgedBeforeThinning() {
        double[] values = {18.0, 18.0, 18.1, 31.0, 18.0, 18.1, 18.0, 18.0};
        for (int i = 0; i < values.length; i++) {
            hear(5L * i, values[i]);
        }
        // A single reading that leaves and returns (rule: at most two in a row) is no extreme of the air.
        assertEquals(1, at(65).size());
        assertEquals(18.0, at(65).valueAt(0), 0.051);
    }

    @Test
    void aFloodTakesNoMoreRoomThanSecondsAndIsCounted() {
        for (int i = 0; i < 60_000; i++) {
            hear(i / 1_000, 18);
        }
        assertEquals(60, ear.counts().taken());
        assertEquals(59_940, ear.counts().crowded());
        assertEquals(1, at(65).size());
    }

    @Test
    void aReadingThatComesOnceInAWhileKeepsItsOwnTime() {
        hear(17, 18.4);
        assertEquals(TimeSeries.of(new long[] {T + 17}, new double[] {18.4}), at(65));
    }

    @Test
    void nonsenseIsCountedToldAndNeverTaken() {
        hear(1, "offline");
        hear(2, "NaN");
        hear(3, 64.4);
        ear.hear("18".getBytes(StandardCharsets.UTF_8), true, NOON);
        assertEquals(new Ear.Counts(0, 2, 1, 0, 1), ear.counts());
        assertTrue(at(100).isEmpty());
        List<String> told = ear.faults(NOON).stream().map(InvalidInput::key).toList();
        // 64.4 degrees F are 18 degrees C, by definition of the scales.
        assertEquals(List.of("listen.fault.numberless", "listen.fault.fahrenheit"), told);
        assertEquals(
                "listen.fault.silent", ear.faults(NOON.plusSeconds(3601)).get(0).key());
        assertTrue(ear.leftOut().isPresent());
        assertTrue(ear.leftOut().isEmpty(), "told when it grows");
    }

    @Test
    void aNumberIsFoundByItsPointer() {
        Ear json = new Ear("Loft", new FollowedTopic("l", "/air/0/t", TemperatureUnit.FAHRENHEIT, -10, 45), NOON);
        byte[] message = "{\"air\": [{\"t\": 64.4}]}".getBytes(StandardCharsets.UTF_8);
        json.hear(message, false, NOON.plusSeconds(3));
        json.hear("[1]".getBytes(StandardCharsets.UTF_8), false, NOON.plusSeconds(4));
        assertEquals(18, json.samples(NOON.plusSeconds(65), false).valueAt(0), 1e-9);
        assertEquals(1, json.counts().numberless());
    }

    private final Ear timed =
            new Ear("Loft", new FollowedTopic("loft", "/t", "/at", TemperatureUnit.CELSIUS, -10, 45), NOON);

    private void hear(String at, double celsius, boolean retained) {
        String message = "{\"t\": " + celsius + ", \"at\": " + at + "}";
        timed.hear(message.getBytes(StandardCharsets.UTF_8), retained, NOON);
    }

    /** The same moment in the three ways a sensor may tell it; 20 minutes late, and kept by the broker. */
    @Test
    void aMessageThatSaysWhenItWasMeasuredCountsForThatMoment() {
        long then = T - 1_200;
        for (String at : List.of("\"2026-11-25T12:40:00+01:00\"", String.valueOf(then), then + "000")) {
            Ear fresh = new Ear("Loft", timed.topic(), NOON);
            String message = "{\"t\": 17.5, \"at\": " + at + "}";
            fresh.hear(message.getBytes(StandardCharsets.UTF_8), true, NOON);
            assertEquals(TimeSeries.of(new long[] {then}, new double[] {17.5}), fresh.samples(NOON, false), at);
            assertEquals(List.of(), fresh.faults(NOON));
        }
    }

    @Test
    void aClockThatWasNeverSetIsToldAndTheMomentOfComingTaken() {
        hear("120", 18, false);
        assertEquals(
                List.of("listen.fault.clock"),
                timed.faults(NOON).stream().map(InvalidInput::key).toList());
        assertEquals(T, timed.samples(NOON.plusSeconds(70), false).firstTime());
        hear(String.valueOf(T + 7_200), 18, true);
        assertEquals(1, timed.counts().retained(), "of one that was kept nobody knows when it came");
        hear(String.valueOf(T - 60), 18, false);
        assertEquals(List.of(), timed.faults(NOON), "the clock is set");
    }

    @Test
    void twiceTheSameMessageIsOneReading() {
        hear(String.valueOf(T - 60), 18, false);
        hear(String.valueOf(T - 60), 18, false);
        assertEquals(1, timed.counts().taken());
    }
}
