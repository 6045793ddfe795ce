package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Interval;
import undercroft.series.TimeSeries;
import undercroft.store.json.CellarJson;

/** The table of DEVELOPERS.md of what each correction of the model changed on a small cellar says what the model says now. */
class CorrectionsTest {
    private static final Instant NOW = Instant.parse("2026-06-30T12:00:00Z");
    private static final Pattern ROW =
            Pattern.compile("^\\| C[^|]*\\|[^|]*\\|[^|]*\\|[^|]*\\| `([^`]+)` \\|(.*)\\|$", Pattern.MULTILINE);

    /** 20 °C with five hours of 38 °C every day, every ten minutes. */
    private static TimeSeries hotAfternoons() {
        TimeSeries.Builder log = new TimeSeries.Builder();
        long until = NOW.getEpochSecond();
        for (long t = until - 41 * 86_400L; t <= until; t += 600) {
            long hour = Math.floorMod(t, 86_400L) / 3600;
            log.add(t, hour >= 12 && hour < 17 ? 38 : 20);
        }
        return log.build();
    }

    private static CellarOutlook outlook() throws IOException {
        try (InputStream in = CorrectionsTest.class.getResourceAsStream("corrections.json")) {
            Cellar cellar =
                    CellarJson.read(in.readAllBytes(), "corrections.json").cellar();
            return Outlooks.of(cellar, Map.of("hot", hotAfternoons()), NOW);
        }
    }

    @Test
    void theTableSaysWhatTheModelSays() throws IOException {
        CellarOutlook outlook = outlook();
        List<String> told = new ArrayList<>();
        List<String> are = new ArrayList<>();
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        for (MatchResult row : ROW.matcher(page).results().toList()) {
            String id = row.group(1);
            told.add(id + " |" + row.group(2) + "|");
            LotOutlook lot = outlook.batch(id).mainLot();
            Interval strongest = lot.pressure().strongestBottle();
            are.add(String.format(
                    Locale.ROOT,
                    "%s | %s, %s | %s to %s |",
                    id,
                    outlook.batch(id).alert().name().toLowerCase(Locale.ROOT),
                    limit(lot.pressure().heatLimitCelsius()),
                    tenth(strongest.low(), RoundingMode.FLOOR),
                    tenth(strongest.high(), RoundingMode.CEILING)));
        }
        assertEquals(outlook.batches().size(), told.size());
        assertEquals(String.join("\n", are), String.join("\n", told));
    }

    private static String limit(double celsius) {
        return Double.isInfinite(celsius) ? "none" : celsius < 0 ? "passed" : String.valueOf((int) celsius);
    }

    private static String tenth(double bar, RoundingMode rounding) {
        return BigDecimal.valueOf(bar).setScale(1, rounding).toPlainString();
    }
}
