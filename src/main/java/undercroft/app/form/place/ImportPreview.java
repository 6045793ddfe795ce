package undercroft.app.form.place;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import undercroft.quantity.InvalidInput;
import undercroft.store.logger.Inspection;
import undercroft.store.logger.LoggerFile;
import undercroft.wording.Messages;

/**
 * The beginning of a logger's file.
 *
 * @param header the columns' names, or empty where the file has none
 * @param rows the first lines with data, cut at the separator
 * @param words what was found, in a few words
 */
public record ImportPreview(
        String name, List<String> header, List<List<String>> rows, String words, Inspection inspection) {
    private static final int ROWS = 4;
    private static final int COLUMNS = 5;
    private static final int LONGEST_CELL = 24;

    public ImportPreview {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /** Looks at a file; blocks on a disk. */
    static ImportPreview of(Messages messages, Path file, ZoneId zone) {
        Inspection found = LoggerFile.inspect(file, zone);
        List<String> header = List.of();
        List<List<String>> rows = new ArrayList<>();
        CharsetDecoder decoder = found.charset().newDecoder().onMalformedInput(CodingErrorAction.REPLACE);
        InputStream head = new ByteArrayInputStream(LoggerFile.head(file));
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(head, decoder))) {
            String line = reader.readLine();
            for (int number = 1; line != null && rows.size() < ROWS; number++) {
                if (number == found.headerLine()) {
                    header = cells(line, found);
                } else if (number >= found.firstLine() && !line.isBlank()) {
                    rows.add(cells(line, found));
                }
                line = reader.readLine();
            }
        } catch (IOException unreadable) {
            throw new InvalidInput(found.name(), "file.fault.not-allowed");
        }
        return new ImportPreview(found.name(), header, rows, words(messages, found), found);
    }

    private static List<String> cells(String line, Inspection found) {
        String[] cut = line.replace("\uFEFF", "").split(Pattern.quote(String.valueOf(found.separator())), -1);
        return Arrays.stream(cut)
                .limit(COLUMNS)
                .map(cell -> cell.strip().replaceAll("^\"|\"$", ""))
                .map(cell -> cell.length() > LONGEST_CELL ? cell.substring(0, LONGEST_CELL - 1) + "…" : cell)
                .toList();
    }

    private static String words(Messages messages, Inspection found) {
        String separator = switch (found.separator()) {
            case ',' -> messages.of("form.import.separator.comma");
            case ';' -> messages.of("form.import.separator.semicolon");
            case '\t' -> messages.of("form.import.separator.tab");
            default -> messages.of("form.import.separator.other");
        };
        String clock = found.ownOffset()
                ? messages.of("form.import.clock.own")
                : messages.of("form.import.clock.zone", found.zone().getId());
        return messages.of("form.import.found", separator, found.exampleTime(), clock);
    }
}
