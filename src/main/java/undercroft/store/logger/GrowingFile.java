package undercroft.store.logger;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Objects;
import java.util.function.Consumer;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.Disk;
import undercroft.store.logger.text.Encodings;
import undercroft.store.logger.text.LineReader;

/**
 * Reads a file's complete new lines each time it is asked. Keeps the file open, so that after a rotation the old one's
 * last lines are still read. Notices a file cut short and written anew even when it is longer than before, because the
 * bytes before the place reached are no longer the same.
 */
final class GrowingFile implements AutoCloseable {
    private static final int PIECE = 1 << 22;
    private static final int REMEMBERED = 64;

    private final Path path;
    private final Choices choices;
    private final boolean wide;
    private LogParser parser;
    private SeekableByteChannel channel;
    private Object key;
    private long position;
    private int line;
    private byte[] before = new byte[0];

    GrowingFile(Path path, Choices choices) {
        this.path = path;
        this.choices = choices;
        this.wide = Encodings.isWide(choices.charset());
        this.parser = new LogParser(choices, true, 64);
    }

    /** Hands out the samples of lines completed since the last call. A file away or locked is tried again next time. */
    void readNew(Consumer<TimeSeries> onSamples) {
        try {
            if (channel != null && isAnother()) {
                readLines(onSamples);
                close();
            }
            if (channel == null) {
                open();
            }
            if (channel.size() < position || !Arrays.equals(before, bytesBefore())) {
                restart();
            }
            readLines(onSamples);
        } catch (IOException | InvalidInput goneOrLocked) {
            close();
        }
    }

    private boolean isAnother() throws IOException {
        return Files.exists(path) && !Objects.equals(key, keyOf(path));
    }

    private void open() throws IOException {
        Path ordinary = LoggerFile.ordinary(path);
        Object found = keyOf(ordinary);
        channel = Disk.REAL.openToRead(ordinary);
        if (!Objects.equals(found, key)) {
            restart();
        }
        key = found;
    }

    private static Object keyOf(Path path) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        return attributes.fileKey() == null ? attributes.creationTime() : attributes.fileKey();
    }

    private void restart() {
        position = 0;
        line = 0;
        before = new byte[0];
        parser = new LogParser(choices, true, 64);
    }

    private byte[] bytesBefore() throws IOException {
        return bytes(position - before.length, before.length);
    }

    private byte[] bytes(long from, int most) throws IOException {
        ByteBuffer into = ByteBuffer.allocate(most);
        channel.position(from);
        int read = 0;
        while (into.hasRemaining() && read >= 0) {
            read = channel.read(into);
        }
        return Arrays.copyOf(into.array(), into.position());
    }

    private void readLines(Consumer<TimeSeries> onSamples) throws IOException {
        while (channel.size() > position) {
            byte[] piece = bytes(position, (int) Math.min(PIECE, channel.size() - position));
            int complete = endOfLastLine(piece);
            if (complete == 0 && piece.length < PIECE) {
                return;
            }
            int taken = complete == 0 ? piece.length : complete;
            int mark = position == 0 ? Encodings.byteOrderMarkLength(piece) : 0;
            parse(Arrays.copyOfRange(piece, Math.min(mark, taken), taken));
            position += taken;
            before = Arrays.copyOfRange(piece, Math.max(0, taken - REMEMBERED), taken);
            TimeSeries samples = parser.handOver();
            if (!samples.isEmpty()) {
                onSamples.accept(samples);
            }
        }
    }

    /** Bytes up to and with the last line feed; a line without one may still be growing. */
    private int endOfLastLine(byte[] piece) {
        boolean bigEndian = choices.charset().equals(StandardCharsets.UTF_16BE);
        for (int i = piece.length - 1; i >= 0; i--) {
            if (piece[i] != '\n') {
                continue;
            }
            if (!wide) {
                return i + 1;
            }
            int pairFrom = bigEndian ? i - 1 : i;
            int zeroAt = bigEndian ? i - 1 : i + 1;
            if (pairFrom >= 0 && pairFrom % 2 == 0 && zeroAt < piece.length && piece[zeroAt] == 0) {
                return pairFrom + 2;
            }
        }
        return 0;
    }

    private void parse(byte[] bytes) throws IOException {
        Charset charset = choices.charset();
        byte[] narrow = wide ? new String(bytes, charset).getBytes(StandardCharsets.UTF_8) : bytes;
        LineReader reader = new LineReader(new ByteArrayInputStream(narrow), Math.max(16, narrow.length + 1));
        while (reader.next()) {
            line++;
            parser.line(reader.buffer(), reader.from(), reader.until(), line);
        }
    }

    @Override
    public void close() {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException nothingToLose) {
            channel = null;
        }
        channel = null;
    }
}
