package undercroft.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Gravity;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Mass;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.Volume;
import undercroft.report.ShelfCalendar;
import undercroft.store.Broker;
import undercroft.store.CellarStore;
import undercroft.store.json.CellarJson;
import undercroft.store.json.ReadingsFile;
import undercroft.store.logger.Choices;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.Progress;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/**
 * Odd input of every kind, made from sound input by chance with fixed seeds: it is read, and what is read comes back from what is
 * written, or one sentence says what is wrong. Nothing else is thrown.
 */
class OddInputTest {
    private static final int FEW = 2_000;
    private static final int MANY = 100_000;

    /** What is read by how many of a hundred inputs. */
    private enum Reader {
        QUANTITY(30),
        CELLAR(22),
        OLD_CELLAR(8),
        LOG(20),
        READINGS(10),
        BROKER(9),
        CALENDAR(1);

        private final int share;

        Reader(int share) {
            this.share = share;
        }
    }

    private static final List<String> QUANTITIES = List.of(
            "19 L",
            "5gal",
            "330 mL",
            "12 fl oz",
            "110 g",
            "4 oz",
            "1.5 lb",
            "20 °C",
            "68F",
            "2.4 vol",
            "3.5 g/L",
            "1.012",
            "12 °P",
            "3 bar",
            "45 psi",
            "4,7",
            "1'000 g",
            "1012");

    private static final List<Consumer<String>> PARSERS = List.of(
            Volume::parse, Mass::parse, Temperature::parse, Carbonation::parse, Gravity::parse, Pressure::parse);

    private static final List<String> LOGS = List.of(
            "time,celsius\n2026-03-29T01:30:00Z,12.375\n2026-03-29T02:00:00Z,-3\n2026-03-29T02:30:00Z,11\n",
            "Datum;Zeit;Temperatur °C;Feuchte %\n29.03.2026;01:30;12,4;55\n29.03.2026;01:40;12,5;56\n29.03.2026;01:50;12,6;57\n",
            "\"No.\",\"Date Time\",\"Temp, °F\"\n1,3/29/26 1:30 PM,54.3\n2,3/29/26 1:40 PM,54.5\n3,3/29/26 1:50 PM,54.4\n",
            "1774747800 18.5\n1774748400 18.6\n1774749000 18.7\n1774749600 18.8\n");

    private static final String READINGS = "{\"batch\": \"pale\", \"readings\": [{\"kind\": \"gauge\", \"at\":"
            + " \"2026-11-20T10:00:00Z\", \"lot\": \"brown\", \"gauge\": \"gauge bottle\", \"gaugeBar\": 2.1},"
            + " {\"kind\": \"gravity\", \"at\": \"2026-11-20T10:00:00Z\", \"specificGravity\": 1.011}]}";

    private static final String BROKER =
            "host=broker.example\nport=8883\ntls=true\nuser=cellar\npassword=s3cret\ncertificates=/etc/own.pem\n";

    private final String cellar = resource("cellar-schema-2.json");
    private final String oldCellar = resource("cellar-schema-1.json");
    private int told;
    private int read;

    @TempDir
    Path folder;

    private static String resource(String name) {
        try (InputStream in = CellarStore.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException missing) {
            throw new AssertionError(missing);
        }
    }

    @Test
    void twoThousandOddInputs() {
        run(FEW, 1);
    }

    @Test
    @Tag("endurance")
    void aHundredThousandOddInputs() {
        run(MANY, 2);
        System.out.println(MANY + " odd inputs: " + read + " read, " + told + " told");
    }

    /** Found by chance once: the library of JSON does not call it its own fault. */
    @Test
    void anExponentOfFortyDigitsIsTold() {
        String odd = cellar.replace("\"altitudeMetres\": 410.5", "\"altitudeMetres\": 1e" + "9".repeat(40));
        InvalidInput fault = assertThrows(
                InvalidInput.class, () -> CellarJson.read(odd.getBytes(StandardCharsets.UTF_8), "cellar.json"));
        sentence(fault, "an exponent");
        assertTrue(
                Messages.english().fault(fault).contains("settings.altitudeMetres"),
                Messages.english().fault(fault));
    }

    private void run(int inputs, int seed) {
        for (int i = 0; i < inputs; i++) {
            Mutant mutant = new Mutant(seed * 1_000_003L + i);
            Reader reader = reader(i % 100);
            String what = reader + " of seed " + seed + ", input " + i;
            try {
                one(reader, mutant, what);
                read++;
            } catch (InvalidInput fault) {
                told++;
                sentence(fault, what);
            } catch (RuntimeException | IOException | ParserException | StackOverflowError thrown) {
                fail(what, thrown);
            }
        }
        assertTrue(told > inputs / 20, "so few were odd: " + told);
        assertTrue(read > inputs / 20, "so few could be read: " + read);
    }

    private static Reader reader(int of100) {
        int until = 0;
        for (Reader reader : Reader.values()) {
            until += reader.share;
            if (of100 < until) {
                return reader;
            }
        }
        throw new IllegalStateException("the shares are a hundred together");
    }

    /** One line, in both languages, without the words of a programmer. */
    private static void sentence(InvalidInput fault, String what) {
        for (Messages messages : List.of(Messages.english(), Messages.in(Locale.GERMAN))) {
            String said = messages.fault(fault);
            assertFalse(said.isBlank() || said.contains("\n") || said.contains("Exception"), what + ": " + said);
        }
    }

    private void one(Reader reader, Mutant mutant, String what) throws IOException, ParserException {
        switch (reader) {
            case QUANTITY -> mutant.oneOf(PARSERS).accept(mutant.of(mutant.oneOf(QUANTITIES)));
            case CELLAR -> cellar(mutant.bytesOf(cellar), what);
            case OLD_CELLAR -> cellar(mutant.bytesOf(oldCellar), what);
            case LOG -> log(mutant.bytesOf(mutant.oneOf(LOGS)), what);
            case READINGS -> readings(mutant.bytesOf(READINGS), what);
            case BROKER -> broker(mutant.bytesOf(BROKER));
            case CALENDAR -> calendar(mutant, what);
        }
    }

    private static void cellar(byte[] bytes, String what) {
        Cellar once = CellarJson.read(bytes, "cellar.json").cellar();
        Cellar again = CellarJson.read(CellarJson.of(once, "test").bytes(), "cellar.json")
                .cellar();
        assertEquals(once, again, what);
    }

    private static void log(byte[] bytes, String what) {
        Choices choices = Choices.from(LoggerFile.inspect("log.csv", bytes, ZoneOffset.UTC));
        ImportedLog log = LoggerFile.read("log.csv", bytes, choices, Progress.NONE);
        for (int i = 0; i < log.celsius().size(); i++) {
            assertTrue(Double.isFinite(log.celsius().valueAt(i)), what);
        }
    }

    private static void readings(byte[] bytes, String what) {
        ReadingsFile once = ReadingsFile.read(bytes);
        assertEquals(once, ReadingsFile.read(once.bytes()), what);
    }

    private void broker(byte[] bytes) throws IOException {
        Path file = folder.resolve(Broker.FILE);
        Files.deleteIfExists(file);
        Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        Files.write(file, bytes);
        Broker.in(folder);
    }

    /** A name as odd as it may be comes back from the calendar, and no line of it is too long (RFC 5545, 3.1). */
    private static void calendar(Mutant mutant, String what) throws IOException, ParserException {
        Batch serves = DemoShelf.cellar().batch("lock-gate-bitter");
        int events = parsed(calendar(serves)).getComponents().size();
        String name = mutant.of("Lock Gate Bitter, the second; \"pale\"");
        Batch odd = new Batch(
                serves.id(),
                name,
                serves.beer(),
                serves.yeast(),
                serves.priming(),
                serves.packaging(),
                serves.cappedAt(),
                serves.lots(),
                serves.readings(),
                serves.notes(),
                serves.plan(),
                serves.leaveOutOfLearning());
        String text = calendar(odd);
        for (String line : text.split("\r\n", -1)) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, what + ": " + line);
            assertTrue(line.chars().noneMatch(each -> each < 32 && each != '\t'), what + ": " + line);
        }
        assertTrue(events > 0);
        assertEquals(events, parsed(text).getComponents().size(), what);
    }

    private static String calendar(Batch batch) {
        Cellar cellar = DemoShelf.cellar().withBatches(List.of(batch)).withServings(List.of());
        CellarOutlook outlook = Outlooks.of(cellar, Map.of(), DemoShelf.NOW);
        return ShelfCalendar.of(ShelfWords.of(outlook, Messages.english()), DemoShelf.NOW)
                .text();
    }

    private static Calendar parsed(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }
}
