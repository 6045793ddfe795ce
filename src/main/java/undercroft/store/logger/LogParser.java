package undercroft.store.logger;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import undercroft.series.TimeSeries;
import undercroft.store.logger.text.ByteClock;
import undercroft.store.logger.text.Cells;
import undercroft.store.logger.text.ClockText;
import undercroft.store.logger.text.DayNumbers;
import undercroft.store.logger.text.Encodings;
import undercroft.store.logger.text.LocalClock;
import undercroft.store.logger.text.NumberText;
import undercroft.store.logger.text.TimeFormat;

/** Turns lines into samples under a person's choices. Takes bytes in UTF-8 or another superset of ASCII. */
final class LogParser {
    private final Choices choices;
    private final boolean direct;
    private final Charset charset;
    private final int lastColumn;
    private final byte separator;
    private final LocalClock zone;
    private final ClockText clock = new ClockText();
    private final ByteClock byteClock;
    private final Findings findings = new Findings();
    private final SampleCollector samples;
    private long lines;
    private int timeLength;
    private long localSecond;
    private int offsetSeconds;

    /**
     * @param direct whether plain lines may be read straight from their bytes; the result is the same either way
     * @param expected samples to make room for
     */
    LogParser(Choices choices, boolean direct, int expected) {
        this.choices = choices;
        this.direct = direct
                && choices.dateColumn() == choices.clockColumn()
                && choices.dateColumn() != choices.valueColumn()
                && !choices.format().isUnix();
        this.charset = Encodings.isWide(choices.charset()) ? StandardCharsets.UTF_8 : choices.charset();
        this.separator = (byte) choices.separator();
        this.lastColumn = Math.max(choices.valueColumn(), Math.max(choices.dateColumn(), choices.clockColumn()));
        this.byteClock = new ByteClock(choices.format());
        this.zone = new LocalClock(choices.zone());
        this.samples = new SampleCollector(findings, expected);
    }

    void line(byte[] bytes, int from, int until, int number) {
        if (direct && readDirectly(bytes, from, until, number)) {
            lines++;
            return;
        }
        String line = new String(bytes, from, until - from, charset);
        if (line.isBlank()) {
            return;
        }
        lines++;
        List<String> cells = Cells.of(line, choices.separator());
        if (cells.size() <= lastColumn || !readTime(cells)) {
            findings.add(Reason.UNREADABLE, number);
            return;
        }
        String cell = cells.get(choices.valueColumn());
        double value = NumberText.parse(cell, choices.decimalMark());
        if (Double.isNaN(value)) {
            findings.add(NumberText.isNothing(cell) ? Reason.NO_VALUE : Reason.UNREADABLE, number);
            return;
        }
        sample(localSecond, offsetSeconds, value, number);
    }

    /**
     * Most lines have their time in front, as long as the line before had it; a time that reads well there holds neither
     * separator nor quote, so the line need not be searched for it.
     */
    private boolean readDirectly(byte[] bytes, int from, int until, int number) {
        int end = from + timeLength;
        if (timeLength > 0 && end < until && bytes[end] == separator) {
            long local = byteClock.read(bytes, from, end);
            if (local != ClockText.NO_TIME) {
                return readValue(bytes, end + 1, until, 1, local, number);
            }
        }
        int timeFrom = cellStart(bytes, from, until, 0, choices.dateColumn());
        int timeUntil = cellEnd(bytes, timeFrom, until);
        if (timeFrom < 0 || timeUntil < 0) {
            return false;
        }
        long local = byteClock.read(bytes, timeFrom, timeUntil);
        if (local == ClockText.NO_TIME) {
            return false;
        }
        boolean timeInFront = choices.dateColumn() == 0;
        timeLength = timeInFront ? timeUntil - timeFrom : 0;
        boolean valueBehind = choices.valueColumn() > choices.dateColumn();
        return valueBehind
                ? timeUntil < until && readValue(bytes, timeUntil + 1, until, choices.dateColumn() + 1, local, number)
                : readValue(bytes, from, until, 0, local, number);
    }

    private boolean readValue(byte[] bytes, int from, int until, int column, long local, int number) {
        int start = cellStart(bytes, from, until, column, choices.valueColumn());
        int end = cellEnd(bytes, start, until);
        if (start < 0 || end < 0) {
            return false;
        }
        double value = NumberText.parsePlain(bytes, start, end, (byte) choices.decimalMark());
        if (Double.isNaN(value)) {
            return false;
        }
        sample(local, byteClock.offsetSeconds, value, number);
        return true;
    }

    /** Where a column's cell begins, {@code from} being where column {@code at} does; −1 when quotes or the end come first. */
    private int cellStart(byte[] bytes, int from, int until, int at, int column) {
        int start = from;
        for (int i = at; i < column; i++) {
            int end = cellEnd(bytes, start, until);
            if (end < 0 || end == until) {
                return -1;
            }
            start = end + 1;
        }
        return start;
    }

    /** −1 when a quote comes first, or when there is no start. */
    private int cellEnd(byte[] bytes, int start, int until) {
        int at = start;
        if (at < 0) {
            return -1;
        }
        while (at < until && bytes[at] != separator) {
            if (bytes[at] == '"') {
                return -1;
            }
            at++;
        }
        return at;
    }

    private boolean readTime(List<String> cells) {
        String date = cells.get(choices.dateColumn());
        if (choices.format().isUnix()) {
            double count = NumberText.parse(date, '.');
            localSecond = (long) Math.floor(choices.format() == TimeFormat.UNIX_SECONDS ? count : count / 1000);
            offsetSeconds = 0;
            return !Double.isNaN(count) && DayNumbers.isPlausible(localSecond);
        }
        boolean together = choices.dateColumn() == choices.clockColumn();
        if (!clock.read(together ? date : date + " " + cells.get(choices.clockColumn())) || !clock.hasDate) {
            return false;
        }
        long midnight = clock.midnight(choices.format());
        localSecond = midnight + clock.secondOfDay;
        offsetSeconds = clock.offsetSeconds;
        return midnight != ClockText.NO_TIME;
    }

    private void sample(long local, int offset, double value, int number) {
        double celsius = choices.unit().toCelsius(value) + 0.0;
        if (Sentinels.isSentinel(value, celsius)) {
            findings.add(Reason.SENTINEL, number);
        } else if (celsius < Sentinels.COLDEST || celsius > Sentinels.HOTTEST) {
            findings.add(Reason.OUT_OF_RANGE, number);
        } else if (offset != ClockText.NO_OFFSET) {
            samples.add(local - offset, celsius, number);
        } else if (zone.isPlainDay(local)) {
            samples.add(local - zone.offset(), celsius, number);
        } else {
            onAChangingDay(local, celsius, number);
        }
    }

    private void onAChangingDay(long local, double celsius, int number) {
        ZoneOffsetTransition change = zone.changeAt(local);
        if (change == null) {
            samples.add(local - zone.offsetAt(local), celsius, number);
        } else if (change.isOverlap()) {
            samples.addRepeated(local, celsius, number, change);
        } else {
            findings.add(Reason.SKIPPED_HOUR, number);
            samples.add(local - change.getOffsetBefore().getTotalSeconds(), celsius, number);
        }
    }

    TimeSeries handOver() {
        return samples.handOver();
    }

    ImportedLog finish() {
        TimeSeries series = samples.finish();
        return new ImportedLog(series, lines, findings.byReason());
    }
}
