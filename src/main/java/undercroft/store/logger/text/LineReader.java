package undercroft.store.logger.text;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** Hands out a stream's lines as stretches of one buffer: no object for a line. Ends of line: LF, CR LF, CR. */
public final class LineReader {
    /** A longer line belongs to no log; the rest of it is taken as the next line. */
    static final int LONGEST = 1 << 20;

    private final InputStream in;
    private byte[] buffer;
    private int filled;
    private int next;
    private int from;
    private int until;
    private int number;
    private long consumed;
    private boolean ended;

    public LineReader(InputStream in) {
        this(in, 1 << 18);
    }

    public LineReader(InputStream in, int bufferSize) {
        this.in = in;
        this.buffer = new byte[bufferSize];
    }

    public boolean next() throws IOException {
        from = next;
        int at = next;
        while (true) {
            byte[] bytes = buffer;
            int end = filled;
            at = EightBytes.endOfLine(bytes, at, end);
            boolean returnAtEdge = at == end - 1 && bytes[at] == '\r' && !ended;
            if ((at < end && !returnAtEdge) || at - from >= LONGEST) {
                break;
            }
            int kept = at - from;
            if (!fill()) {
                if (from >= filled) {
                    return false;
                }
                at = from + kept;
                break;
            }
            at = from + kept;
        }
        until = at;
        next = at;
        if (next < filled && buffer[next] == '\r') {
            next++;
        }
        if (next < filled && buffer[next] == '\n' && (next == at || buffer[next - 1] == '\r')) {
            next++;
        }
        number++;
        return true;
    }

    private boolean fill() throws IOException {
        if (ended) {
            return false;
        }
        if (from > 0) {
            System.arraycopy(buffer, from, buffer, 0, filled - from);
            consumed += from;
            filled -= from;
            from = 0;
        }
        if (filled == buffer.length) {
            buffer = Arrays.copyOf(buffer, buffer.length * 2);
        }
        int read = in.read(buffer, filled, buffer.length - filled);
        if (read < 0) {
            ended = true;
            return true;
        }
        filled += read;
        return true;
    }

    public byte[] buffer() {
        return buffer;
    }

    public int from() {
        return from;
    }

    public int until() {
        return until;
    }

    /** The line's number, from 1. */
    public int number() {
        return number;
    }

    /** Bytes read up to the end of this line. */
    public long consumed() {
        return consumed + next;
    }
}
