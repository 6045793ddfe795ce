package undercroft.calc.light;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One of the tables of spectra that come with the tool: head lines with the source after a hash, a line of column names,
 * then rows by rising wavelength, and for light sources a closing row of illuminances. A table that is missing or broken
 * is a fault of the build and stops the calculation.
 */
final class SpectralTable {
    private static final String LUX = "lux";

    private final String name;
    private final List<String> columns;
    private final List<String[]> rows;
    private final Optional<String[]> luxRow;

    private SpectralTable(String name, List<String> columns, List<String[]> rows, Optional<String[]> luxRow) {
        this.name = name;
        this.columns = columns;
        this.rows = rows;
        this.luxRow = luxRow;
    }

    static SpectralTable read(String name) {
        try (InputStream stream = SpectralTable.class.getResourceAsStream("/undercroft/calc/light/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the spectral table " + name + " is missing from this program");
            }
            List<String[]> cells = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .toList();
            return of(name, cells);
        } catch (IOException e) {
            throw new UncheckedIOException("the spectral table " + name + " cannot be read", e);
        }
    }

    static SpectralTable of(String name, List<String[]> cells) {
        if (cells.size() < 3) {
            throw new IllegalStateException("the spectral table " + name + " is cut short");
        }
        List<String> columns = Arrays.asList(cells.get(0));
        for (String[] row : cells) {
            if (row.length != columns.size()) {
                throw new IllegalStateException(
                        "the spectral table " + name + " has a row of " + row.length + " cells");
            }
        }
        String[] last = cells.get(cells.size() - 1);
        boolean hasLux = last[0].equals(LUX);
        return new SpectralTable(
                name,
                columns,
                cells.subList(1, cells.size() - (hasLux ? 1 : 0)),
                hasLux ? Optional.of(last) : Optional.empty());
    }

    Spectrum column(String column) {
        int index = index(column);
        double start = number(rows.get(0)[0]);
        double step = number(rows.get(1)[0]) - start;
        double[] values = new double[rows.size()];
        for (int i = 0; i < values.length; i++) {
            if (number(rows.get(i)[0]) != start + i * step) {
                throw new IllegalStateException("the spectral table " + name + " skips a wavelength in row " + i);
            }
            values[i] = number(rows.get(i)[index]);
        }
        return new Spectrum(start, step, values);
    }

    /** Illuminance of the column's full spectrum, lx, as its source gives it. */
    double lux(String column) {
        String[] row =
                luxRow.orElseThrow(() -> new IllegalStateException("the spectral table " + name + " has no lux"));
        return number(row[index(column)]);
    }

    private int index(String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new IllegalStateException("the spectral table " + name + " has no column " + column);
        }
        return index;
    }

    private double number(String cell) {
        try {
            double value = Double.parseDouble(cell);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new IllegalStateException("the spectral table " + name + " holds \"" + cell + "\"", e);
        }
        throw new IllegalStateException("the spectral table " + name + " holds \"" + cell + "\"");
    }
}
