package undercroft.store.logger.text;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A line's cells. A log has one line a reading, so quotes are undone line by line: a stray quote in a damaged file
 * spoils its own line and not the rest.
 */
public final class Cells {
    private Cells() {}

    public static List<String> of(String line, char separator) {
        if (line.indexOf('"') >= 0) {
            return unquoted(line, separator);
        }
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int at = line.indexOf(separator); at >= 0; at = line.indexOf(separator, from)) {
            cells.add(line.substring(from, at).strip());
            from = at + 1;
        }
        cells.add(line.substring(from).strip());
        return cells;
    }

    private static List<String> unquoted(String line, char separator) {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(false)
                .ofCsvRecord(line)) {
            for (CsvRecord first : reader) {
                return first.getFields().stream().map(String::strip).toList();
            }
            return List.of();
        } catch (CsvParseException tooLong) {
            return List.of();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
