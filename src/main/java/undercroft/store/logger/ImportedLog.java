package undercroft.store.logger;

import java.util.Map;
import undercroft.series.TimeSeries;

/**
 * What a file gave.
 *
 * @param celsius the samples in °C at UTC seconds, rising in time
 * @param lines lines with something in them from the first data line on
 * @param findings what was noticed, by reason; reasons without a line are absent
 */
public record ImportedLog(TimeSeries celsius, long lines, Map<Reason, Finding> findings) {
    public ImportedLog {
        findings = Map.copyOf(findings);
    }

    public int kept() {
        return celsius.size();
    }

    public Finding found(Reason reason) {
        return findings.getOrDefault(reason, Finding.NONE);
    }

    /** Lines left out, for whatever reason. */
    public long dropped() {
        return findings.entrySet().stream()
                .filter(entry -> entry.getKey().drops())
                .mapToLong(entry -> entry.getValue().count())
                .sum();
    }
}
