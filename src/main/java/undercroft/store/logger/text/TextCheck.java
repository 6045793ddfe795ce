package undercroft.store.logger.text;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import undercroft.quantity.InvalidInput;

/** Refuses what is no text, each kind with what to do about it. */
public final class TextCheck {
    private static final Map<String, String> KINDS = Map.of(
            "PK\u0003\u0004", "this is a spreadsheet or a packed folder; save the log as CSV text first",
            "\u00d0\u00cf\u0011\u00e0", "this is a spreadsheet; save it as CSV text first",
            "\u0089PNG", "this is a picture; choose the logger's file of figures",
            "\u00ff\u00d8\u00ff", "this is a picture; choose the logger's file of figures",
            "%PDF", "this is a PDF; export the log as CSV text instead",
            "\u001f\u008b", "this file is packed; unpack it first");

    /** A log cut off by a power failure may carry a few zero bytes; more of them are no text. */
    private static final int ZEROS_PER_THOUSAND = 100;

    private TextCheck() {}

    public static void requireText(String name, byte[] head) {
        if (head.length == 0) {
            throw new InvalidInput(name, "the file is empty; export the log again");
        }
        String beginning = new String(head, 0, Math.min(8, head.length), StandardCharsets.ISO_8859_1);
        KINDS.forEach((mark, sentence) -> {
            if (beginning.startsWith(mark)) {
                throw new InvalidInput(name, sentence);
            }
        });
        if (!Encodings.isWide(Encodings.of(head)) && zeros(head) * 1000L > (long) head.length * ZEROS_PER_THOUSAND) {
            throw new InvalidInput(name, "this is no text file; export the log as CSV text");
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
