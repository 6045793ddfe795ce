package undercroft.store.logger.text;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import undercroft.quantity.InvalidInput;

/** Refuses what is no text, each kind with what to do about it. */
public final class TextCheck {
    private static final Map<String, String> KINDS = Map.of(
            "PK\u0003\u0004", "logger.fault.packed-folder",
            "\u00d0\u00cf\u0011\u00e0", "logger.fault.spreadsheet",
            "\u0089PNG", "logger.fault.picture",
            "\u00ff\u00d8\u00ff", "logger.fault.picture",
            "%PDF", "logger.fault.pdf",
            "\u001f\u008b", "logger.fault.packed");

    /** A log cut off by a power failure may carry a few zero bytes; more of them are no text. */
    private static final int ZEROS_PER_THOUSAND = 100;

    private TextCheck() {}

    public static void requireText(String name, byte[] head) {
        if (head.length == 0) {
            throw new InvalidInput(name, "logger.fault.empty");
        }
        String beginning = new String(head, 0, Math.min(8, head.length), StandardCharsets.ISO_8859_1);
        KINDS.forEach((mark, key) -> {
            if (beginning.startsWith(mark)) {
                throw new InvalidInput(name, key);
            }
        });
        if (!Encodings.isWide(Encodings.of(head)) && zeros(head) * 1000L > (long) head.length * ZEROS_PER_THOUSAND) {
            throw new InvalidInput(name, "logger.fault.no-text");
        }
    }

    private static int zeros(byte[] head) {
        int zeros = 0;
        for (byte b : head) {
            zeros += b == 0 ? 1 : 0;
        }
        return zeros;
    }
}
