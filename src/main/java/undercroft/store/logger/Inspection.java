package undercroft.store.logger;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import undercroft.quantity.Phrase;
import undercroft.store.logger.Question.About;
import undercroft.store.logger.text.TimeFormat;

/**
 * What was found in a file before reading it. Columns count from 0, lines from 1.
 *
 * @param byteOrderMark whether the file begins with one
 * @param quoted whether any cell near the beginning stands in quotes
 * @param headerLine the line with the columns' names, or 0 when there is none
 * @param firstLine the first line with data; what stands before the header is a preamble
 * @param columns every column with a number in it that is not the time
 * @param valueColumn the most likely of them
 * @param columnConfidence whether it surely is the temperature
 * @param format the order of a date's parts, or Unix time
 * @param formatProven false when another order fits as well
 * @param twelveHour whether times carry AM or PM
 * @param ownOffset whether times carry their offset from UTC
 * @param zone for times without offset: the one given, or a fixed offset the header names
 * @param medianValue median of the value column near the beginning, as written
 */
public record Inspection(
        String name,
        Charset charset,
        boolean byteOrderMark,
        char separator,
        boolean quoted,
        char decimalMark,
        int headerLine,
        int firstLine,
        int dateColumn,
        int clockColumn,
        List<Column> columns,
        int valueColumn,
        Confidence columnConfidence,
        TimeFormat format,
        boolean formatProven,
        boolean twelveHour,
        boolean ownOffset,
        ZoneId zone,
        LoggerUnit unit,
        Confidence unitConfidence,
        double medianValue,
        String exampleTime) {
    public Inspection {
        columns = List.copyOf(columns);
    }

    /** A column of numbers: its place, its name in the header (or a made-up one) and its first cells as written. */
    public record Column(int index, String name, List<String> examples) {
        public Column {
            examples = List.copyOf(examples);
        }
    }

    private String nameOf(int column) {
        return columns.stream()
                .filter(each -> each.index() == column)
                .map(Column::name)
                .findFirst()
                .orElseThrow();
    }

    public boolean hasHeader() {
        return headerLine > 0;
    }

    /** Lines before the header, or before the data when there is no header. */
    public int preambleLines() {
        return (hasHeader() ? headerLine : firstLine) - 1;
    }

    /** What a person must be asked before the guesses may be trusted; empty when the file speaks for itself. */
    public List<Question> questions() {
        List<Question> questions = new ArrayList<>();
        if (!formatProven) {
            questions.add(new Question(About.DATE_ORDER, Phrase.of("logger.question.dates", name, exampleTime)));
        }
        if (columnConfidence == Confidence.ASK) {
            questions.add(new Question(About.COLUMN, Phrase.of("logger.question.column", name, nameOf(valueColumn))));
        }
        if (unitConfidence == Confidence.ASK) {
            questions.add(
                    new Question(About.UNIT, Phrase.of("logger.question.unit", name, medianValue, unit.symbol())));
        }
        return questions;
    }
}
