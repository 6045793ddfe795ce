package undercroft.view.kit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/**
 * Pixels as a PNG file (ISO/IEC 15948): eight bits a channel, without interlacing or filters. The toolkit can encode none
 * without a second toolkit beside it.
 */
final class PngFile {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte BITS = 8;
    private static final byte RED_GREEN_BLUE = 2;
    private static final int CHANNELS = 3;

    private PngFile() {}

    /** {@code argb} row by row, opaque. */
    static byte[] of(int width, int height, int[] argb) {
        byte[] rows = new byte[height * (1 + CHANNELS * width)];
        int at = 0;
        for (int y = 0; y < height; y++) {
            rows[at++] = 0;
            for (int x = 0; x < width; x++) {
                int pixel = argb[y * width + x];
                rows[at++] = (byte) (pixel >> 16);
                rows[at++] = (byte) (pixel >> 8);
                rows[at++] = (byte) pixel;
            }
        }
        ByteArrayOutputStream file = new ByteArrayOutputStream(rows.length / 8 + 100);
        file.writeBytes(SIGNATURE);
        chunk(
                file,
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(width)
                        .putInt(height)
                        .put(BITS)
                        .put(RED_GREEN_BLUE)
                        .put(new byte[3])
                        .array());
        chunk(file, "IDAT", deflated(rows));
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static byte[] deflated(byte[] rows) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(packed)) {
            deflater.write(rows);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return packed.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        file.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        file.writeBytes(name);
        file.writeBytes(data);
        file.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }
}
