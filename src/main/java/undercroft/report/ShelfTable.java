package undercroft.report;

import java.util.ArrayList;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.wording.Headlines;

/** The shelf as a short table of plain text, for where there is no window. */
public final class ShelfTable {
    private static final int LONGEST_NAME = 24;
    private static final int SHORTEST_HEADLINE = 12;
    private static final String GAP = "  ";

    private ShelfTable() {}

    /** Lines of at most {@code width} columns, what wants attention first; headlines go on below where they are long. */
    public static String of(CellarOutlook outlook, int width) {
        List<List<String>> rows = new ArrayList<>();
        Headlines headlines = new Headlines(Wording.of(outlook));
        rows.add(List.of("", "batch", "stage", "left", ""));
        for (BatchOutlook batch : ShelfPage.inOrder(outlook)) {
            rows.add(List.of(
                    batch.alert().label(),
                    cut(plain(batch.batch().name()), LONGEST_NAME),
                    batch.stage().label(),
                    batch.isCapped() ? Integer.toString(batch.bottlesLeft()) : "-",
                    plain(headlines.of(batch))));
        }
        if (rows.size() == 1) {
            return "Nothing has been bottled yet.\n";
        }
        int[] widths = new int[4];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], columns(row.get(i)));
            }
        }
        StringBuilder table = new StringBuilder();
        rows.forEach(row -> table.append(line(row, widths, width)).append('\n'));
        return table.toString();
    }

    private static String line(List<String> row, int[] widths, int width) {
        String start = padded(row.get(0), widths[0])
                + GAP
                + padded(row.get(1), widths[1])
                + GAP
                + padded(row.get(2), widths[2])
                + GAP
                + " ".repeat(widths[3] - columns(row.get(3)))
                + row.get(3);
        int room = width - columns(start) - GAP.length();
        if (room < SHORTEST_HEADLINE) {
            return cut(start.stripTrailing(), width);
        }
        String below = "\n" + " ".repeat(columns(start)) + GAP;
        return (start + GAP + String.join(below, wrapped(row.get(4), room))).stripTrailing();
    }

    /** The text in lines of at most {@code room} columns, broken between words. */
    private static List<String> wrapped(String text, int room) {
        List<String> lines = new ArrayList<>(List.of(""));
        for (String word : text.split(" ", -1)) {
            String last = lines.get(lines.size() - 1);
            String longer = last.isEmpty() ? word : last + " " + word;
            if (columns(longer) <= room) {
                lines.set(lines.size() - 1, longer);
            } else {
                lines.add(cut(word, room));
            }
        }
        return lines;
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - columns(text));
    }

    /** The text, or as much of it as fits with an ellipsis. */
    private static String cut(String text, int width) {
        if (columns(text) <= width) {
            return text;
        }
        StringBuilder kept = new StringBuilder();
        int used = 0;
        for (int c : text.codePoints().toArray()) {
            used += columns(c);
            if (used > width - 1) {
                break;
            }
            kept.appendCodePoint(c);
        }
        return kept.toString().stripTrailing() + "…";
    }

    /** On one line, without what would steer a terminal. */
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        Markup.undirected(text).codePoints().forEach(c -> plain.appendCodePoint(Character.isISOControl(c) ? ' ' : c));
        return plain.toString().strip();
    }

    private static int columns(String text) {
        return text.codePoints().map(ShelfTable::columns).sum();
    }

    /** Columns a terminal usually gives a character: none to combining marks, two to East Asian letters and emoji. */
    private static int columns(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = (c >= 0x1100 && c <= 0x115F)
                || (c >= 0x2E80 && c <= 0xA4CF)
                || (c >= 0xAC00 && c <= 0xD7A3)
                || (c >= 0xF900 && c <= 0xFAFF)
                || (c >= 0xFF00 && c <= 0xFF60)
                || (c >= 0x1F300 && c <= 0x1FAFF)
                || (c >= 0x20000 && c <= 0x3FFFD);
        return wide ? 2 : 1;
    }
}
