package undercroft.store.logger;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Objects;
import undercroft.cellar.FollowedLog;
import undercroft.quantity.InvalidInput;
import undercroft.store.logger.text.TimeFormat;

/**
 * How a file is to be read: an inspection's findings with a person's decisions in place of its guesses. Columns count
 * from 0, lines from 1.
 *
 * @param firstLine the first line that may hold data
 * @param dateColumn holds the date, or date and time
 * @param clockColumn holds the time of day; the same as {@code dateColumn} when one column holds both
 * @param zone for times without an offset of their own
 */
public record Choices(
        Charset charset,
        char separator,
        char decimalMark,
        int firstLine,
        int dateColumn,
        int clockColumn,
        int valueColumn,
        TimeFormat format,
        LoggerUnit unit,
        ZoneId zone) {
    public Choices {
        Objects.requireNonNull(charset);
        Objects.requireNonNull(format);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(zone);
        if (dateColumn < 0 || clockColumn < 0 || valueColumn < 0) {
            throw new IllegalArgumentException("columns count from 0");
        }
    }

    /** Every guess taken as it is. */
    public static Choices from(Inspection found) {
        return new Choices(
                found.charset(),
                found.separator(),
                found.decimalMark(),
                found.firstLine(),
                found.dateColumn(),
                found.clockColumn(),
                found.valueColumn(),
                found.format(),
                found.unit(),
                found.zone());
    }

    /** How a place's followed file is read; an {@link InvalidInput} when it names what no reader knows. */
    public static Choices from(FollowedLog log) {
        try {
            return new Choices(
                    Charset.forName(log.charset()),
                    log.separator(),
                    log.decimalMark(),
                    log.firstLine(),
                    log.dateColumn(),
                    log.clockColumn(),
                    log.valueColumn(),
                    TimeFormat.valueOf(log.timeFormat()),
                    LoggerUnit.valueOf(log.unit()),
                    log.zone());
        } catch (IllegalArgumentException unknown) {
            throw new InvalidInput(log.path(), "logger.fault.unknown-way");
        }
    }

    /** What a place remembers to follow a file read so. */
    public FollowedLog followed(Path file) {
        return new FollowedLog(
                file.toAbsolutePath().toString(),
                charset.name(),
                separator,
                decimalMark,
                firstLine,
                dateColumn,
                clockColumn,
                valueColumn,
                format.name(),
                unit.name(),
                zone);
    }

    public Choices withSeparator(char other) {
        return new Choices(
                charset, other, decimalMark, firstLine, dateColumn, clockColumn, valueColumn, format, unit, zone);
    }

    public Choices withDecimalMark(char other) {
        return new Choices(
                charset, separator, other, firstLine, dateColumn, clockColumn, valueColumn, format, unit, zone);
    }

    public Choices withValueColumn(int other) {
        return new Choices(
                charset, separator, decimalMark, firstLine, dateColumn, clockColumn, other, format, unit, zone);
    }

    public Choices withFormat(TimeFormat other) {
        return new Choices(
                charset, separator, decimalMark, firstLine, dateColumn, clockColumn, valueColumn, other, unit, zone);
    }

    public Choices withUnit(LoggerUnit other) {
        return new Choices(
                charset, separator, decimalMark, firstLine, dateColumn, clockColumn, valueColumn, format, other, zone);
    }

    public Choices withZone(ZoneId other) {
        return new Choices(
                charset, separator, decimalMark, firstLine, dateColumn, clockColumn, valueColumn, format, unit, other);
    }
}
