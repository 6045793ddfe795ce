package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.spell.SpellReview;
import undercroft.report.ShelfReport;
import undercroft.series.TimeSeries;
import undercroft.store.Export;
import undercroft.store.logger.Choices;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.Progress;
import undercroft.wording.English;

/**
 * A real temperature record through import, forecast and report: daily extremes of New York, May to September 2013 (NOAA;
 * the file names its source and licence), drawn out to hourly readings as a logger of local time would write them.
 */
final class RealRecordTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    @TempDir
    private Path folder;

    @Test
    void theHottestWeekOfARealSummerReachesTheReport() throws IOException {
        Path file = folder.resolve("porch.csv");
        Files.write(file, loggerLines(), StandardCharsets.UTF_8);
        ImportedLog log = LoggerFile.read(file, Choices.from(LoggerFile.inspect(file, NEW_YORK)), Progress.NONE);
        assertEquals(153 * 24, log.kept(), "May to September has 153 days");
        TimeSeries porch = log.celsius();

        CellarOutlook outlook = Outlooks.of(cellar(), Map.of("porch", porch), Instant.parse("2013-07-25T16:00:00Z"));

        SpellReview hottest = outlook.spells().stream()
                .filter(SpellReview::warm)
                .filter(spell -> spell.peakCelsius() > 30)
                .findFirst()
                .orElseThrow();
        // The record's own hottest seven days are 15 to 21 July 2013.
        assertTrue(hottest.from().isBefore(Instant.parse("2013-07-17T00:00:00Z")));
        assertTrue(hottest.until().isAfter(Instant.parse("2013-07-20T00:00:00Z")));
        assertEquals("porch-ale", hottest.impacts().get(0).batchId());
        assertTrue(hottest.impacts().get(0).shelfDaysCost() > 2);

        BatchOutlook ale = outlook.batch("porch-ale");
        double warmest = ale.mainLot().temperature().warmestCelsius();
        assertTrue(warmest > 30 && warmest < 37.2, "bottles lag the air, whose highest was 37.2 °C: " + warmest);
        assertTrue(ale.mainLot().pressure().peakPast().median()
                > ale.mainLot().pressure().atPresent().median());
        assertTrue(ale.mainLot().temperature().coverage() > 0.99);
        // Common practice, no source: two weeks at room temperature; this summer porch was warmer than a room.
        assertTrue(ale.mainLot().ready().median().orElseThrow().isBefore(Instant.parse("2013-06-25T00:00:00Z")));

        Path out = folder.resolve("report");
        Export.ofTexts().folder(out, ShelfReport.of(English.of(outlook), Map.of()), Export.Replacing.OURS);
        assertTrue(Files.readString(out.resolve("report.json")).contains("\"porch-ale\""));
        assertTrue(Files.readString(out.resolve("index.html")).contains("Porch ale"));
    }

    private static List<String> loggerLines() throws IOException {
        List<String> lines = new ArrayList<>(List.of("Time,Temperature (°C)"));
        try (InputStream in = RealRecordTest.class.getResourceAsStream("/undercroft/series/new-york-2013-summer.csv")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.matches("\\d.*"))
                    .map(line -> line.split(","))
                    .forEach(day -> {
                        double high = Double.parseDouble(day[1]);
                        double low = Double.parseDouble(day[2]);
                        for (int hour = 0; hour < 24; hour++) {
                            double swing = Math.cos(2 * Math.PI * (hour - 15) / 24);
                            double celsius = (high + low) / 2 + (high - low) / 2 * swing;
                            lines.add(String.format(
                                    Locale.ROOT, "%s %02d:00,%.1f", LocalDate.parse(day[0]), hour, celsius));
                        }
                    });
        }
        return lines;
    }

    private static Cellar cellar() {
        Instant capped = Instant.parse("2013-06-01T16:00:00Z");
        Place porch =
                new Place("porch", "Porch", new TemperatureSource.Logged(), 6, LightSetting.usual(LightPlace.DARK));
        Lot lot = new Lot(
                "box",
                "longneck-355",
                GlassColour.AMBER,
                48,
                355,
                false,
                List.of(new Stay("porch", capped, Cover.CLOSED_BOX)),
                List.of());
        Batch batch = new Batch(
                "porch-ale",
                "Porch ale",
                new Beer(BeerStyle.PALE_ALE, 5, 30, 0, 12, 22, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(18.9, List.of(new SugarDose("dextrose", 130)), OptionalDouble.empty(), false),
                FillingMethod.CAREFUL,
                Optional.of(capped),
                List.of(lot),
                List.of(),
                "");
        return Cellar.empty("Porch", NEW_YORK).withPlace(porch).withBatch(batch);
    }
}
