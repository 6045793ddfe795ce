package undercroft.store.logger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.quantity.InvalidInput;
import undercroft.store.logger.text.Cells;

/**
 * Days ahead as a weather service tells them: a text with a line a day, {@code date, low, high}, the date as
 * 2026-07-14, temperatures in °C. Columns part at semicolon, tab or comma; with the first two a comma may be the decimal
 * mark. A first line of words is a heading.
 */
public final class ForecastFile {
    private static final int LONGEST_BYTES = 1 << 20;

    private ForecastFile() {}

    /** A day's lowest and highest air temperature, °C. */
    public record Day(LocalDate date, double lowCelsius, double highCelsius) {}

    /** The days in a file, in order. The first line at fault is told by its number. */
    public static List<Day> read(Path file) {
        String name = LoggerFile.nameOf(file);
        try {
            if (Files.size(file) > LONGEST_BYTES) {
                throw new InvalidInput(name, "logger.forecast.too-long");
            }
            return parse(name, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new InvalidInput(name, "logger.forecast.unreadable");
        }
    }

    static List<Day> parse(String name, String text) {
        List<Day> days = new ArrayList<>();
        String[] lines = text.replace("\uFEFF", "").split("\\R", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            boolean heading = days.isEmpty()
                    && !line.isEmpty()
                    && !Character.isDigit(line.replace("\"", "").charAt(0));
            if (!line.isEmpty() && !heading) {
                days.add(dayOf(name, line, i + 1));
            }
        }
        if (days.isEmpty()) {
            throw new InvalidInput(name, "logger.forecast.no-day");
        }
        days.sort(Comparator.comparing(Day::date));
        for (int i = 1; i < days.size(); i++) {
            if (days.get(i).date().equals(days.get(i - 1).date())) {
                throw new InvalidInput(
                        name, "logger.forecast.twice", days.get(i).date().toString());
            }
        }
        return List.copyOf(days);
    }

    private static Day dayOf(String name, String line, int number) {
        try {
            return day(name, line);
        } catch (InvalidInput fault) {
            throw fault.onLine(number);
        }
    }

    private static Day day(String where, String line) {
        char separator = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
        List<String> cells = Cells.of(line, separator);
        if (cells.size() < 3) {
            throw new InvalidInput(where, "logger.forecast.cells");
        }
        try {
            LocalDate date = LocalDate.parse(cells.get(0).strip());
            double low = celsius(where, cells.get(1));
            double high = celsius(where, cells.get(2));
            if (low > high) {
                throw new InvalidInput(where, "logger.forecast.swapped");
            }
            return new Day(date, low, high);
        } catch (DateTimeParseException noDate) {
            throw new InvalidInput(where, "logger.forecast.date");
        }
    }

    private static double celsius(String where, String cell) {
        try {
            double celsius = Double.parseDouble(cell.strip().replace(',', '.').replace('\u2212', '-'));
            if (celsius >= -40 && celsius <= 60) {
                return celsius;
            }
        } catch (NumberFormatException noNumber) {
            throw new InvalidInput(where, "logger.forecast.not-celsius", cell.strip());
        }
        throw new InvalidInput(where, "logger.forecast.range", cell.strip());
    }
}
