package undercroft.store.logger;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import undercroft.quantity.InvalidInput;
import undercroft.store.logger.text.Cells;
import undercroft.store.logger.text.Encodings;
import undercroft.store.logger.text.LineReader;

/** Looks at one file's beginning and says what it holds. */
final class Inspector {
    private static final int LINES = 1000;
    private static final Pattern HEADER_ZONE =
            Pattern.compile("(?:UTC|GMT)\\s*(?:([+−-])\\s*(\\d{1,2})(?::?(\\d{2}))?)?");

    private final String name;
    private final LoggerFile.Source source;
    private final ZoneId zone;

    Inspector(String name, LoggerFile.Source source, ZoneId zone) {
        this.name = name;
        this.source = source;
        this.zone = zone;
    }

    Inspection inspect(byte[] head, boolean cut) throws IOException {
        Charset charset = Encodings.of(head);
        List<String> lines = lines(head, charset, cut);
        Layout layout = Layout.of(lines);
        if (layout == null) {
            throw nothingFound(lines);
        }
        int headerRow = layout.headerRow();
        if (headerRow >= 0 && layout.splitsNumbers(headerRow)) {
            throw new InvalidInput(name, "logger.fault.comma", layout.data().get(0) + 1);
        }
        ValueColumns columns = new ValueColumns(layout, headerRow);
        char mark = columns.decimalMark();
        int value = columns.likeliest(mark);
        double median = columns.median(value, mark);
        UnitGuess unit = UnitGuess.of(columns.said(value), median);
        DateEvidence evidence = new DateEvidence();
        if (layout.unix() == null) {
            layout.data().forEach(row -> evidence.add(layout.time(row)));
            if (!evidence.isSettled()) {
                readOn(evidence, layout, charset);
            }
        }
        String timeHeader = headerRow < 0
                ? ""
                : layout.cell(headerRow, layout.dateColumn()) + " " + layout.cell(headerRow, layout.clockColumn());
        return new Inspection(
                name,
                charset,
                Encodings.byteOrderMarkLength(head) > 0,
                layout.separator(),
                lines.stream().anyMatch(line -> line.indexOf('"') >= 0),
                mark,
                headerRow + 1,
                layout.data().get(0) + 1,
                layout.dateColumn(),
                layout.clockColumn(),
                columns.all(),
                value,
                columns.confidence(value, mark),
                layout.unix() == null ? evidence.format() : layout.unix(),
                layout.unix() != null || evidence.isProven(),
                evidence.twelveHour,
                evidence.ownOffset,
                layout.unix() == null ? zoneIn(timeHeader) : ZoneOffset.UTC,
                unit.unit(),
                unit.confidence(),
                median,
                layout.time(layout.data().get(0)));
    }

    private static List<String> lines(byte[] head, Charset charset, boolean cut) throws IOException {
        LineReader reader = new LineReader(Encodings.narrow(new ByteArrayInputStream(head), charset));
        Charset within = Encodings.isWide(charset) ? StandardCharsets.UTF_8 : charset;
        List<String> lines = new ArrayList<>();
        while (lines.size() <= LINES && reader.next()) {
            lines.add(new String(reader.buffer(), reader.from(), reader.until() - reader.from(), within));
        }
        if (lines.size() > LINES || (cut && lines.size() > 1)) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }

    private void readOn(DateEvidence evidence, Layout layout, Charset charset) throws IOException {
        int read = layout.rows().size();
        Charset within = Encodings.isWide(charset) ? StandardCharsets.UTF_8 : charset;
        int last = Math.max(layout.dateColumn(), layout.clockColumn());
        try (InputStream in = Encodings.narrow(source.open(), charset)) {
            LineReader reader = new LineReader(in);
            while (reader.next() && !evidence.isSettled()) {
                if (reader.number() > read) {
                    String line = new String(reader.buffer(), reader.from(), reader.until() - reader.from(), within);
                    List<String> cells = Cells.of(line, layout.separator());
                    if (cells.size() > last) {
                        evidence.add(
                                layout.dateColumn() == layout.clockColumn()
                                        ? cells.get(last)
                                        : cells.get(layout.dateColumn()) + " " + cells.get(layout.clockColumn()));
                    }
                }
            }
        }
    }

    private ZoneId zoneIn(String timeHeader) {
        Matcher found = HEADER_ZONE.matcher(timeHeader);
        if (!found.find()) {
            return zone;
        }
        if (found.group(1) == null) {
            return ZoneOffset.UTC;
        }
        try {
            int sign = found.group(1).equals("+") ? 1 : -1;
            int minutes = found.group(3) == null ? 0 : Integer.parseInt(found.group(3));
            return ZoneOffset.ofHoursMinutes(sign * Integer.parseInt(found.group(2)), sign * minutes);
        } catch (DateTimeException noSuchOffset) {
            return zone;
        }
    }

    private InvalidInput nothingFound(List<String> lines) {
        List<String> filled = lines.stream().filter(line -> !line.isBlank()).toList();
        if (filled.isEmpty()) {
            return new InvalidInput(name, "logger.fault.blank");
        }
        if (filled.size() == 1) {
            return new InvalidInput(name, "logger.fault.only-line", lines.indexOf(filled.get(0)) + 1);
        }
        return new InvalidInput(name, "logger.fault.no-reading", lines.size());
    }
}
