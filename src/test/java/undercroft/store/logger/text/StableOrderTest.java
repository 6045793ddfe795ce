package undercroft.store.logger.text;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Comparator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

class StableOrderTest {
    @Property(seed = "20260104")
    void itIsTheOrderTheLibrarysStableSortGives(@ForAll @Size(max = 200) @LongRange(min = 0, max = 30) long[] times) {
        int[] expected = IntStream.range(0, times.length)
                .boxed()
                .sorted(Comparator.comparingLong(i -> times[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        assertArrayEquals(expected, StableOrder.of(times, times.length));
    }
}
