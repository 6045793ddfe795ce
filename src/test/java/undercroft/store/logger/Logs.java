package undercroft.store.logger;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import undercroft.series.TimeSeries;

/** Short ways for the tests of this package; all log files in them are invented. */
final class Logs {
    static final String NAME = "shelf.csv";
    static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private Logs() {}

    static Inspection inspect(String text) {
        return LoggerFile.inspect(NAME, text.getBytes(StandardCharsets.UTF_8), ZoneOffset.UTC);
    }

    static ImportedLog read(String text) {
        return read(text, ZoneOffset.UTC);
    }

    static ImportedLog read(String text, ZoneId zone) {
        return read(text.getBytes(StandardCharsets.UTF_8), zone);
    }

    static ImportedLog read(byte[] bytes, ZoneId zone) {
        return LoggerFile.read(NAME, bytes, Choices.from(LoggerFile.inspect(NAME, bytes, zone)), Progress.NONE);
    }

    /** Pairs of ISO instant and value. */
    static TimeSeries series(Object... pairs) {
        TimeSeries.Builder builder = new TimeSeries.Builder();
        for (int i = 0; i < pairs.length; i += 2) {
            builder.add(Instant.parse((String) pairs[i]).getEpochSecond(), ((Number) pairs[i + 1]).doubleValue());
        }
        return builder.build();
    }
}
