package undercroft.report.experiment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Origin;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.demo.DemoShelf;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

class ExperimentFileTest {
    private static final String BATCH = DemoShelf.cellar().batches().stream()
            .filter(batch -> batch.cappedAt()
                            .filter(capped -> capped.isBefore(DemoShelf.NOW.minus(Duration.ofDays(30))))
                            .isPresent()
                    && batch.leftAt(DemoShelf.NOW) > 2)
            .findFirst()
            .orElseThrow()
            .id();
    private static final String GAUGE = "Grandfather’s dial";
    private static final int DAYS = 24;
    private static final Cellar CELLAR = cellar();
    private static final GaugeExperiment EXPERIMENT = experiment(CELLAR);
    private static final String TEXT = ExperimentCsv.of(CELLAR, EXPERIMENT);

    /** A batch of the demo on which a gauge shows a little more than was forecast, and trembles. */
    private static Cellar cellar() {
        Cellar flat = read(day -> 0);
        GaugeExperiment forecast = experiment(flat);
        return read(
                day -> 1.04 * forecast.fit().points().get(day - 1).forecast().median() + 0.04 * Math.sin(day * day));
    }

    private static Cellar read(IntToDoubleFunction barOnDay) {
        Batch batch = DemoShelf.cellar().batch(BATCH);
        Instant capped = batch.cappedAt().orElseThrow();
        Lot lot = batch.lots().get(0);
        List<Reading> readings = new ArrayList<>();
        for (int day = 1; day <= DAYS; day++) {
            readings.add(new Reading.Gauge(
                    capped.plus(Duration.ofDays(day)),
                    lot.id(),
                    GAUGE,
                    Math.rint(barOnDay.applyAsDouble(day) * 50) / 50));
        }
        Instant opened = capped.plus(Duration.ofDays(DAYS + 1));
        readings.add(new Reading.Opened(opened, lot.id(), PerceivedCarbonation.FULL, new Origin(GAUGE, "", "Ann")));
        // Read on another bottle: no part of the experiment.
        readings.add(new Reading.Gauge(capped.plus(Duration.ofDays(5)), lot.id(), "another", 9));
        FittedGauge fitted = new FittedGauge(GAUGE, capped).opened(opened);
        return DemoShelf.cellar()
                .withBatch(batch.withLot(lot.withGauge(fitted))
                        .withReadings(readings)
                        .withNotes("for Ann’s birthday"));
    }

    private static GaugeExperiment experiment(Cellar cellar) {
        return Outlooks.experiment(cellar, DemoShelf.temperatures(), DemoShelf.NOW, BATCH, Optional.empty());
    }

    private static List<InvalidInput> faults(String text) {
        return ExperimentFile.read("theirs.csv", text).faults();
    }

    @Test
    void whatIsExportedIsSoundAndReadBackFitsTheSame() {
        assertEquals(DAYS, EXPERIMENT.readings().size());
        assertTrue(EXPERIMENT.taste().isPresent());
        ExperimentFile file = ExperimentFile.read("ours.csv", TEXT);
        assertEquals(List.of(), file.faults());
        assertEquals(DAYS, file.readings());
        assertEquals(DAYS, file.days(), 0.01);
        GaugeExperiment again = ExperimentCellar.experiment(file);
        // The air of the place is not in the file, only what the beer felt every six hours, to a hundredth.
        near(
                EXPERIMENT.fit().before().finalGramsPerLitre(),
                again.fit().before().finalGramsPerLitre(),
                0.01);
        near(EXPERIMENT.fit().after().finalGramsPerLitre(), again.fit().after().finalGramsPerLitre(), 0.1);
        near(EXPERIMENT.fit().after().gramsPerLitreDay(), again.fit().after().gramsPerLitreDay(), 0.15);
        assertEquals(EXPERIMENT.fit().fitMissesBar(), again.fit().fitMissesBar(), 0.05);
    }

    private static void near(Interval one, Interval other, double tolerance) {
        assertEquals(one.low(), other.low(), tolerance, one + " " + other);
        assertEquals(one.median(), other.median(), tolerance, one + " " + other);
        assertEquals(one.high(), other.high(), tolerance, one + " " + other);
    }

    @Test
    void noNamePlaceNoteOrDateIsInIt() {
        List<String> words = new ArrayList<>(List.of(GAUGE, "Ann", "birthday", CELLAR.name(), "2025", "2026"));
        CELLAR.places().stream().map(Place::name).forEach(words::add);
        CELLAR.batches().stream().map(Batch::name).forEach(words::add);
        for (String word : words) {
            assertFalse(TEXT.contains(word), word);
        }
        assertFalse(TEXT.matches("(?s).*\\d{4}-\\d\\d-\\d\\d.*"), "a date");
    }

    @Test
    void anExperimentThatWasNotBegunOrNotReadIsToldSo() {
        Batch other = CELLAR.batches().stream()
                .filter(batch -> batch.cappedAt().isPresent() && !batch.id().equals(BATCH))
                .findFirst()
                .orElseThrow();
        InvalidInput none = assertThrows(
                InvalidInput.class,
                () -> Outlooks.experiment(
                        CELLAR, DemoShelf.temperatures(), DemoShelf.NOW, other.id(), Optional.empty()));
        assertEquals("experiment.fault.none", none.key());
        Cellar unread = CELLAR.withBatch(CELLAR.batch(BATCH).withReadings(List.of()));
        InvalidInput notRead = assertThrows(
                InvalidInput.class,
                () -> Outlooks.experiment(unread, DemoShelf.temperatures(), DemoShelf.NOW, BATCH, Optional.empty()));
        assertEquals("experiment.fault.no-readings", notRead.key());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind,hours,value,unit | type,hours,value,unit | line 1: the file does not begin with",
                "format,,1, | format,,2, | line 2: 2 is outside",
                "format,,1, | format,,1 | line 2: 3 cells",
                "format,,1, | format,,1,,x | line 2: 5 cells",
                "format,,1, | colour,,1, | line 2: “colour” is no kind of line",
                "strength,, | strength,,4,2 | line 7: 5 cells",
                "strength,, | strength,,about | line 7: “about",
                "strength,, | strength,3, | line 7: strength has no hours",
                "strength,, | strength,,=1+ | line 7: “=1+",
                "% vol | % | line 7: “%” is not the unit of strength; give % vol",
                "yeast,, | yeast,,x | line 3: “x",
                "temperature,6, | temperature,0, | not after the temperature before it",
                "temperature,6, | temperature,, | “” is not a plain number",
                "fill,, | fill,,-1 | is outside",
                "taste,600.00 | taste,6.00 | the bottle was tasted before its last reading",
            })
    void aFaultIsToldWithItsLine(String old, String replacement, String expected) {
        String changed = TEXT.replace(old, replacement);
        assertNotEquals(TEXT, changed, "the sample holds " + old);
        List<InvalidInput> faults = faults(changed);
        assertFalse(faults.isEmpty());
        String sentence = Messages.english().fault(faults.get(0));
        assertTrue(sentence.startsWith("theirs.csv: ") && sentence.contains(expected), sentence);
    }

    @Test
    void whatIsMissingTwiceOrCutOffIsTold() {
        String sentence = Messages.english()
                .fault(faults(TEXT.replaceFirst("strength[^\r]*\r\n", "")).get(0));
        assertTrue(sentence.contains("missing: strength"), sentence);
        assertTrue(Messages.english()
                .fault(faults(TEXT.replace("format,,1,\r\n", "format,,1,\r\nformat,,1,\r\n"))
                        .get(0))
                .contains("line 3: format is there twice"));
        String cut = TEXT.replaceAll("temperature,[3-9]\\d\\d,[^\r]*\r\n", "");
        assertTrue(Messages.english().fault(faults(cut).get(0)).contains("do not reach"));
        assertEquals(1, faults("").size());
        assertEquals(1, faults("\u0000\u0001\u0002").size());
        assertTrue(faults(ExperimentCsv.HEAD + "\n" + "x\n".repeat(100_000)).size() <= 51);
    }

    @Test
    void aFileWithOtherLineEndsIsReadTheSame() {
        assertEquals(List.of(), faults(TEXT.replace("\r\n", "\n")));
    }
}
