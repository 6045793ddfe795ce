package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Iterator;
import java.util.List;
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
        } else if (expected instanceof Track track && actual instanceof Track other) {
            assertArrayEquals(numbers(track), numbers(other), where);
        } else if (expected instanceof double[] numbers && actual instanceof double[] others) {
            assertArrayEquals(numbers, others, where);
        } else if (expected instanceof long[] numbers && actual instanceof long[] others) {
            assertArrayEquals(numbers, others, where);
        } else if (isOnlyItself(expected)) {
            for (Field field : expected.getClass().getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers())) {
                    assertSame(where + " / " + field.getName(), valueOf(field, expected), valueOf(field, actual));
                }
            }
        } else {
            assertEquals(expected, actual, where);
        }
    }

    /** Whether it is a value of ours that does not say when it equals another. */
    private static boolean isOnlyItself(Object value) {
        if (value == null
                || value instanceof Enum
                || !value.getClass().getName().startsWith("undercroft.")) {
            return false;
        }
        try {
            return value.getClass().getMethod("equals", Object.class).getDeclaringClass() == Object.class;
        } catch (NoSuchMethodException never) {
            throw new LinkageError(never.getMessage(), never);
        }
    }

    private static Object valueOf(Field field, Object of) {
        try {
            field.setAccessible(true);
            return field.get(of);
        } catch (IllegalAccessException cannot) {
            throw new LinkageError(cannot.getMessage(), cannot);
        }
    }

    private static Object valueOf(RecordComponent component, Object of) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(of);
        } catch (IllegalAccessException | InvocationTargetException cannot) {
            throw new LinkageError(cannot.getMessage(), cannot);
        }
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
