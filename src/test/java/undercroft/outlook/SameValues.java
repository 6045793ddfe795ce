package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Iterator;
import java.util.List;
import undercroft.series.Band;
import undercroft.series.Track;

/** Whether two outlooks say the same to the last bit, told from all their components down to the numbers. */
final class SameValues {
    private SameValues() {}

    static void assertSame(String where, Object expected, Object actual) {
        if (expected instanceof Record) {
            assertEquals(expected.getClass(), actual.getClass(), where);
            for (RecordComponent component : expected.getClass().getRecordComponents()) {
                String part = where + " / " + component.getName();
                assertSame(part, valueOf(component, expected), valueOf(component, actual));
            }
        } else if (expected instanceof List<?> list && actual instanceof List<?> other) {
            assertEquals(list.size(), other.size(), where);
            Iterator<?> others = other.iterator();
            int index = 0;
            for (Object each : list) {
                assertSame(where + "[" + index++ + "]", each, others.next());
            }
        } else if (expected instanceof Band band && actual instanceof Band other) {
            assertArrayEquals(numbers(band), numbers(other), where);
        } else if (expected instanceof Track track && actual instanceof Track other) {
            assertArrayEquals(numbers(track), numbers(other), where);
        } else {
            assertEquals(expected, actual, where);
        }
    }

    private static Object valueOf(RecordComponent component, Object of) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(of);
        } catch (IllegalAccessException | InvocationTargetException cannot) {
            throw new AssertionError(cannot);
        }
    }

    private static double[] numbers(Band band) {
        double[] numbers = new double[6 * band.size()];
        for (int i = 0, n = 0; i < band.size(); i++) {
            numbers[n++] = band.timeAt(i);
            numbers[n++] = band.lowAt(i);
            numbers[n++] = band.lowerQuartileAt(i);
            numbers[n++] = band.medianAt(i);
            numbers[n++] = band.upperQuartileAt(i);
            numbers[n++] = band.highAt(i);
        }
        return numbers;
    }

    private static double[] numbers(Track track) {
        double[] numbers = new double[3 * track.size()];
        for (int i = 0, n = 0; i < track.size(); i++) {
            numbers[n++] = track.timeAt(i);
            numbers[n++] = track.valueAt(i);
            numbers[n++] = track.spreadAt(i);
        }
        return numbers;
    }
}
