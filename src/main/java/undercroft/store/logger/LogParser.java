package undercroft.store.logger;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import undercroft.series.TimeSeries;

/** Turns lines into samples under a person's choices. Takes bytes in UTF-8 or another superset of ASCII. */
final class LogParser {
    private final Choices choices;
    private final boolean direct;
    private final Charset charset;
    private final int lastColumn;
    private final LocalClock zone;
    private final ClockText clock = new ClockText();
    private final ByteClock byteClock;
    private final Findings findings = new Findings();
    private final SampleCollector samples;
    private long lines;
    private long localSecond;
    private int offsetSeconds;

    /**
     * @param direct whether plain lines may be read straight from their bytes; the result is the same either way
     * @param expected samples to make room for
     */
    LogParser(Choices choices, boolean direct, int expected) {
        this.choices = choices;
        this.direct = direct && choices.dateColumn() == choices.clockColumn();
        this.charset = Texts.isWide(choices.charset()) ? StandardCharsets.UTF_8 : choices.charset();
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

    private boolean readDirectly(byte[] bytes, int from, int until, int number) {
        byte separator = (byte) choices.separator();
        int timeFrom = -1;
        int timeUntil = -1;
        int valueFrom = -1;
        int valueUntil = -1;
        int column = 0;
        int cellFrom = from;
        for (int at = from; at <= until; at++) {
            if (at < until && bytes[at] != separator) {
                if (bytes[at] == '"') {
                    return false;
                }
                continue;
            }
            if (column == choices.dateColumn()) {
                timeFrom = cellFrom;
                timeUntil = at;
            } else if (column == choices.valueColumn()) {
                valueFrom = cellFrom;
                valueUntil = at;
            }
            if (column == lastColumn) {
                break;
            }
            column++;
            cellFrom = at + 1;
        }
        if (timeFrom < 0 || valueFrom < 0 || choices.format().isUnix()) {
            return false;
        }
        long local = byteClock.read(bytes, timeFrom, timeUntil);
        if (local == ClockText.NO_TIME) {
            return false;
        }
        double value = NumberText.parsePlain(bytes, valueFrom, valueUntil, (byte) choices.decimalMark());
        if (Double.isNaN(value)) {
            return false;
        }
        sample(local, byteClock.offsetSeconds, value, number);
        return true;
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
