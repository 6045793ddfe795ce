package undercroft.store.logger.text;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Which characters a file is written in, and its bytes as something ASCII can be read from. */
public final class Encodings {
    private static final Charset WESTERN = Charset.forName("windows-1252");

    private Encodings() {}

    public static Charset of(byte[] head) {
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return StandardCharsets.UTF_8;
        }
        if (starts(head, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (starts(head, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        return isUtf8(head) ? StandardCharsets.UTF_8 : WESTERN;
    }

    public static int byteOrderMarkLength(byte[] head) {
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return 3;
        }
        return starts(head, 0xFF, 0xFE) || starts(head, 0xFE, 0xFF) ? 2 : 0;
    }

    public static boolean isWide(Charset charset) {
        return charset.equals(StandardCharsets.UTF_16LE) || charset.equals(StandardCharsets.UTF_16BE);
    }

    /** A character cut off at the end of the head is no fault. */
    private static boolean isUtf8(byte[] head) {
        return !StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length), false)
                .isError();
    }

    /** The stream behind its byte order mark; 16-bit characters become UTF-8. */
    public static InputStream narrow(InputStream in, Charset charset) throws IOException {
        byte[] mark = in.readNBytes(3);
        int skipped = byteOrderMarkLength(mark);
        InputStream whole = new SequenceInputStream(
                new ByteArrayInputStream(mark, skipped, Math.max(0, mark.length - skipped)), in);
        return isWide(charset) ? new Narrowed(new InputStreamReader(whole, charset)) : whole;
    }

    private static boolean starts(byte[] head, int... mark) {
        if (head.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static final class Narrowed extends InputStream {
        private final Reader reader;
        private final char[] characters = new char[1 << 14];
        private ByteBuffer ready = ByteBuffer.allocate(0);

        Narrowed(Reader reader) {
            this.reader = reader;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            while (!ready.hasRemaining()) {
                int count = reader.read(characters);
                if (count < 0) {
                    return -1;
                }
                ready = StandardCharsets.UTF_8.encode(CharBuffer.wrap(characters, 0, count));
            }
            int count = Math.min(length, ready.remaining());
            ready.get(into, from, count);
            return count;
        }

        @Override
        public void close() throws IOException {
            reader.close();
        }
    }
}
