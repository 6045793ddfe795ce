package undercroft.session.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.demo.DemoShelf;
import undercroft.listen.LiveBroker;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.HandClock;
import undercroft.session.IncomingFiles;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.store.disk.FaultyDisk;
import undercroft.store.logger.Choices;
import undercroft.store.logger.LoggerFile;
import undercroft.wording.Messages;

class WatchTest {
    private static final Duration TEN_MINUTES = Duration.ofMinutes(10);

    @TempDir
    Path scratch;

    private Path folder;
    private Path page;
    private final HandClock clock = new HandClock(DemoShelf.NOW);
    private final List<String> said = new ArrayList<>();
    private final List<String> complained = new ArrayList<>();

    @BeforeEach
    void aCellarWithOnePlace() throws IOException {
        folder = scratch.resolve("cellar");
        page = Files.createDirectory(scratch.resolve("page"));
        Place loft = new Place(
                "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK));
        CellarStore.create(folder, Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft), clock, "test")
                .close();
    }

    private Watch watch() {
        return new Watch(
                folder, Optional.of(page), Optional.empty(), clock, Messages.english(), said::add, complained::add);
    }

    private CellarStore open() {
        return CellarStore.open(folder, clock, "a window");
    }

    private TimeSeries logged() {
        return CellarStore.temperatures(folder, CellarStore.read(folder))
                .celsius()
                .getOrDefault("loft", TimeSeries.empty());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    private void change(UnaryOperator<Cellar> change) {
        try (CellarStore store = open()) {
            store.save(change.apply(store.cellar()));
        }
    }

    /** Followed files are read by threads of their own. */
    private static void roundsUntil(Watch watch, BooleanSupplier done) throws InterruptedException {
        for (int i = 0; i < 200 && !done.getAsBoolean(); i++) {
            Thread.sleep(50);
            watch.round();
        }
        assertTrue(done.getAsBoolean());
    }

    @Test
    void aFollowedFileIsSavedAndWhileAWindowHasTheCellarItWaitsInIncoming() throws IOException, InterruptedException {
        Path log = scratch.resolve("logger.csv");
        Files.writeString(log, "time;temperature °C\n2026-11-20 20:00;7,4\n2026-11-20 20:30;7,5\n");
        Choices choices = Choices.from(LoggerFile.inspect(log, ZoneOffset.UTC));
        change(cellar -> cellar.withPlace(cellar.place("loft").withFollowed(Optional.of(choices.followed(log)))));
        try (Watch watch = watch()) {
            roundsUntil(watch, () -> logged().size() == 2);
            assertEquals(
                    new TemperatureSource.Logged(),
                    CellarStore.read(folder).place("loft").temperature());
            try (CellarStore window = open()) {
                Files.writeString(log, Files.readString(log) + "2026-11-20 21:00;7,6\n");
                Path waiting = folder.resolve("incoming/loft");
                roundsUntil(watch, () -> Files.isDirectory(waiting));
                assertEquals(2, logged().size());
                assertEquals(1, IncomingFiles.takeInAlone(window).celsius().size());
                assertEquals(3, logged().size());
            }
            watch.round();
        }
        assertEquals(List.of(), complained);
    }

    @Test
    void aWindowThatComesWhileItSavesWaitsAMomentAndIsNotTurnedAway() throws InterruptedException {
        CellarStore passing = CellarStore.openInPassing(folder, clock, "watch");
        Thread leaves = new Thread(() -> {
            try {
                Thread.sleep(300);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
            passing.close();
        });
        leaves.start();
        try (CellarStore window = open()) {
            assertFalse(window.lookOnly().isPresent());
            InvalidInput held =
                    assertThrows(InvalidInput.class, () -> CellarStore.openInPassing(folder, clock, "watch"));
            assertTrue(CellarStore.isOpenElsewhere(held));
        }
        leaves.join();
    }

    @Test
    void aPageThatCannotBePublishedIsToldOnceTriedAgainAndNothingForeignIsTouched() throws IOException {
        Files.delete(page);
        try (Watch watch = watch()) {
            watch.round();
            clock.goOn(TEN_MINUTES);
            watch.round();
            assertEquals(1, complained.size(), "" + complained);
            assertTrue(complained.get(0).startsWith(page + ": is not there"), complained.get(0));
            assertFalse(Files.exists(page), "a drive that is away is not written beside");
            Files.createDirectory(page);
            Files.writeString(page.resolve("atom.xml"), "<feed>of somebody else</feed>");
            clock.goOn(TEN_MINUTES);
            watch.round();
            assertEquals(List.of("atom.xml"), names(page));
            assertEquals("<feed>of somebody else</feed>", Files.readString(page.resolve("atom.xml")));
            assertEquals(2, complained.size(), "" + complained);
            Files.delete(page.resolve("atom.xml"));
            clock.goOn(TEN_MINUTES);
            watch.round();
            assertEquals(List.of("atom.xml", "dates.ics", "index.html", "report.json"), names(page));
            assertEquals(3, complained.size(), "" + complained);
            Instant written =
                    Files.getLastModifiedTime(page.resolve("index.html")).toInstant();
            clock.goOn(Duration.ofMinutes(9));
            watch.round();
            assertEquals(
                    written,
                    Files.getLastModifiedTime(page.resolve("index.html")).toInstant(),
                    "every ten minutes");
        }
    }

    @Test
    void aFullDriveKeepsThePageThatIsThereAndIsPublishedToAgainOnceThereIsRoom() throws IOException {
        boolean[] full = {false};
        FaultyDisk drive =
                new FaultyDisk("No space left on device", (call, path) -> full[0] && call == FaultyDisk.Call.WRITE);
        try (Watch watch = new Watch(
                folder,
                Optional.of(page),
                Export.on(drive),
                Optional.empty(),
                clock,
                Messages.english(),
                said::add,
                complained::add)) {
            watch.round();
            String before = Files.readString(page.resolve("index.html"));
            List<String> whole = names(page);
            full[0] = true;
            change(cellar -> cellar.withName("Another name"));
            for (int round = 0; round < 2; round++) {
                clock.goOn(TEN_MINUTES);
                watch.round();
            }
            assertEquals(1, complained.size(), "" + complained);
            assertTrue(complained.get(0).contains("No space left on device"), complained.get(0));
            assertEquals(before, Files.readString(page.resolve("index.html")));
            assertEquals(whole, names(page), "nothing half written is left");
            full[0] = false;
            clock.goOn(TEN_MINUTES);
            watch.round();
            assertTrue(Files.readString(page.resolve("index.html")).contains("Another name"));
            assertEquals(2, complained.size(), "that it is over is told too: " + complained);
        }
    }

    /** Nobody answers for a message of the lightest kind, so what is heard in the last minute is worth saving too. */
    @Test
    void whatIsHeardInTheLastMinuteIsSavedWhenTheWatchEnds() {
        change(cellar -> cellar.withPlace(cellar.place("loft")
                .withTopic(Optional.of(new FollowedTopic("home/loft", "", TemperatureUnit.CELSIUS, -10, 45)))));
        LiveBroker broker = LiveBroker.plain(scratch);
        int saved;
        try (Watch watch = new Watch(
                folder,
                Optional.empty(),
                Optional.of(broker.named(LiveBroker.PASSWORD)),
                clock,
                Messages.english(),
                said::add,
                complained::add)) {
            watch.round();
            Mqtt3BlockingClient sensor = broker.sensor();
            // Heard or not cannot be seen from outside before a minute is over: so the first one is waited for.
            LiveBroker.await(() -> {
                LiveBroker.send(sensor, "home/loft", MqttQos.AT_MOST_ONCE, "18");
                clock.goOn(Duration.ofSeconds(70));
                watch.save();
                return !logged().isEmpty();
            });
            clock.goOn(Duration.ofMinutes(10));
            LiveBroker.await(() -> {
                LiveBroker.send(sensor, "home/loft", MqttQos.AT_MOST_ONCE, "19.25");
                clock.goOn(Duration.ofSeconds(70));
                return watch.isDue();
            });
            saved = logged().size();
        } finally {
            broker.stop();
        }
        assertTrue(logged().size() > saved, saved + " before it ended");
    }

    /** A batch of the demo, of which a bottle burst an hour ago. */
    private void burst(String batchId) {
        change(ignored -> {
            Batch batch = DemoShelf.cellar().batch(batchId);
            Lot lot = batch.lots().get(0);
            List<Draw> draws = new ArrayList<>(lot.draws());
            draws.add(new Draw(clock.instant().minus(Duration.ofHours(1)), 1, Draw.Fate.BURST, ""));
            return DemoShelf.cellar().withServings(List.of()).withBatches(List.of(batch.withLot(lot.withDraws(draws))));
        });
    }

    @Test
    void whatWantsDoingAtOnceIsSaidOnceAndStandsInAFeedThatARestartKeeps() throws Exception {
        Batch any = DemoShelf.cellar().batches().stream()
                .filter(batch -> batch.leftAt(DemoShelf.NOW) > 3)
                .findFirst()
                .orElseThrow();
        burst(any.id());
        try (Watch watch = watch()) {
            watch.round();
            clock.goOn(TEN_MINUTES);
            watch.round();
        }
        assertEquals(1, said.size(), "" + said);
        assertTrue(said.get(0).contains(any.name()) && said.get(0).contains("act now"), said.get(0));
        Document first = feed();
        try (Watch again = watch()) {
            clock.goOn(TEN_MINUTES);
            again.round();
            assertEquals(1, said.size(), "it was told before the restart");
            Document second = feed();
            assertEquals(text(first, "entry", "id"), text(second, "entry", "id"));
            assertEquals(text(first, "entry", "updated"), text(second, "entry", "updated"));
            burst(any.id());
            clock.goOn(TEN_MINUTES);
            again.round();
            assertEquals(2, said.size(), "a second burst is news");
            assertFalse(text(first, "entry", "id").equals(text(feed(), "entry", "id")));
        }
        assertEquals(List.of(), complained);
    }

    /** Read by the JDK's parser, and held to what RFC 4287, sections 4.1.1 and 4.1.2, asks of feed and entry. */
    private Document feed() throws Exception {
        DocumentBuilderFactory readers = DocumentBuilderFactory.newInstance();
        readers.setNamespaceAware(true);
        Document feed = readers.newDocumentBuilder()
                .parse(new InputSource(new StringReader(Files.readString(page.resolve("atom.xml")))));
        assertEquals("http://www.w3.org/2005/Atom", feed.getDocumentElement().getNamespaceURI());
        for (String parent : List.of("feed", "entry")) {
            assertTrue(URI.create(text(feed, parent, "id")).isAbsolute());
            assertFalse(text(feed, parent, "title").isBlank());
            Instant.parse(text(feed, parent, "updated"));
        }
        assertFalse(text(feed, "author", "name").isBlank());
        return feed;
    }

    private static String text(Document feed, String parent, String child) {
        Element element = (Element) feed.getElementsByTagName(parent).item(0);
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (child.equals(node.getNodeName())) {
                return node.getTextContent();
            }
        }
        throw new AssertionError(parent + " has no " + child);
    }
}
