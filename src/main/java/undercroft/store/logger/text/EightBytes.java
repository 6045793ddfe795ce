package undercroft.store.logger.text;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Looks at eight bytes at once, as one number with the first byte lowest. */
final class EightBytes {
    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long ONES = 0x0101010101010101L;
    private static final long TOPS = 0x8080808080808080L;

    private EightBytes() {}

    static long at(byte[] bytes, int from) {
        return (long) LONGS.get(bytes, from);
    }

    /**
     * The first LF or CR at or behind {@code from}, or {@code until}. A byte of x is zero where (x − 1) &amp; ~x has its
     * top bit; only bytes above the first such one can be marked wrongly, so the lowest mark is always right.
     */
    static int endOfLine(byte[] bytes, int from, int until) {
        int at = from;
        for (; at + 8 <= until; at += 8) {
            long eight = at(bytes, at);
            long feed = eight ^ (ONES * '\n');
            long carriage = eight ^ (ONES * '\r');
            long marks = (((feed - ONES) & ~feed) | ((carriage - ONES) & ~carriage)) & TOPS;
            if (marks != 0) {
                return at + Long.numberOfTrailingZeros(marks) / 8;
            }
        }
        while (at < until && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        return at;
    }
}
