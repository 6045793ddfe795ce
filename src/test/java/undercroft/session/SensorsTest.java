package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.app.form.FormSamples;
import undercroft.catalogue.Cover;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.PressureUnit;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.listen.LiveBroker;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.Broker;
import undercroft.store.CellarStore;

/** A window's cellar that hears sensors over a real broker. */
class SensorsTest {
    private static final FollowedTopic TOPIC = new FollowedTopic("home/loft", "", TemperatureUnit.CELSIUS, -10, 45);

    @TempDir
    Path scratch;

    private final HandWork work = new HandWork();
    private final HandClock clock = new HandClock(Instant.parse("2026-11-25T12:00:00Z"));
    private final List<InvalidInput> faults = new ArrayList<>();
    private LiveBroker broker;
    private Path folder;
    private Path settings;

    @BeforeEach
    void aCellarWhoseLoftHasASensor() {
        broker = LiveBroker.plain(scratch);
        folder = scratch.resolve("cellar");
        settings = scratch.resolve("settings");
        Place loft = new Place(
                        "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK))
                .withTopic(Optional.of(TOPIC));
        CellarStore.create(folder, Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft), clock, "test")
                .close();
    }

    @AfterEach
    void end() {
        broker.stop();
    }

    private OpenCellar open() {
        return OpenCellar.of(
                CellarStore.open(folder, clock, "test"), clock, work.threads(), Optional.of(settings), faults::add);
    }

    private static TimeSeries shown(OpenCellar cellar) {
        return cellar.workspace().getState().temperatures().getOrDefault("loft", TimeSeries.empty());
    }

    /** Sends until it is shown: whether a subscription stands already cannot be seen from outside. */
    private void hear(OpenCellar cellar, Mqtt3BlockingClient sensor, String text, double expected) {
        LiveBroker.await(() -> {
            LiveBroker.send(sensor, "home/loft", MqttQos.AT_LEAST_ONCE, text);
            clock.goOn(Duration.ofSeconds(70));
            work.beat();
            return !shown(cellar).isEmpty() && shown(cellar).lastValue() == expected;
        });
    }

    @Test
    void whatASensorSaysIsSavedThenShownAndThePlaceIsNoLongerGuessed() {
        broker.named(LiveBroker.PASSWORD).keepIn(settings);
        try (OpenCellar cellar = open()) {
            hear(cellar, broker.sensor(), "18.5", 18.5);
            assertEquals(
                    new TemperatureSource.Logged(),
                    cellar.workspace().getCellar().place("loft").temperature());
            assertFalse(CellarStore.temperatures(folder, CellarStore.read(folder))
                    .celsius()
                    .get("loft")
                    .isEmpty());
            assertEquals(
                    "", cellar.workspace().undoTextProperty().get(), "nobody did it, so undo does not take it back");
            Sensors.State state = cellar.sensors().stateProperty().get();
            assertTrue(state.brokerNamed());
            assertTrue(state.places().get("loft").heard().isPresent());
        }
        // On a machine with much else to do a broker may be away for a moment; nothing else may be said.
        List<String> said = List.of("listen.fault.crowded", "listen.fault.away");
        assertTrue(faults.stream().allMatch(fault -> said.contains(fault.key())), "" + faults);
    }

    @Test
    void aBrokerThatIsAwayIsToldOnceAndItsReturnIsHeard() {
        broker.named(LiveBroker.PASSWORD).keepIn(settings);
        try (OpenCellar cellar = open()) {
            hear(cellar, broker.sensor(), "18.5", 18.5);
            long before = timesAway();
            broker.stop();
            LiveBroker.await(() -> {
                work.beat();
                return timesAway() > before;
            });
            work.beat();
            assertEquals(before + 1, timesAway(), "" + faults);
            broker.start();
            hear(cellar, broker.sensor(), "17.5", 17.5);
        }
    }

    private long timesAway() {
        return faults.stream()
                .filter(fault -> fault.key().equals("listen.fault.away"))
                .count();
    }

    @Test
    void aBrokerIsNamedInTheWindowAndHeardFromThenOn() throws Exception {
        try (OpenCellar cellar = open()) {
            work.beat();
            assertFalse(cellar.sensors().stateProperty().get().brokerNamed());
            cellar.sensors().turnTo(Optional.of(broker.named(LiveBroker.PASSWORD)));
            assertEquals("rw-------", mode(settings.resolve(Broker.FILE)));
            hear(cellar, broker.sensor(), "18.5", 18.5);
            cellar.sensors().turnTo(Optional.empty());
            assertFalse(Files.exists(settings.resolve(Broker.FILE)));
            assertFalse(cellar.sensors().stateProperty().get().brokerNamed());
        }
    }

    private static String mode(Path file) throws Exception {
        return java.nio.file.attribute.PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    /** 14.5038 psi are a bar (NIST SP 811). */
    @Test
    void aLiveGaugeBecomesAReadingOfItsLot() {
        broker.named(LiveBroker.PASSWORD).keepIn(settings);
        Instant capped = clock.instant().minus(Duration.ofDays(3));
        Batch batch = FormSamples.batch();
        Lot lot = new Lot(
                "brown",
                batch.lots().get(0).bottleTypeId(),
                batch.lots().get(0).colour(),
                20,
                330,
                false,
                List.of(new Stay("loft", capped, Cover.CLOSED_BOX)),
                List.of());
        FittedGauge gauge = new FittedGauge("live", capped)
                .hearing(Optional.of(new PressureTopic("home/gauge", "/p", PressureUnit.PSI)));
        try (CellarStore store = CellarStore.open(folder, clock, "test")) {
            store.save(store.cellar()
                    .withBatch(new Batch(
                            "ale",
                            "Ale",
                            batch.beer(),
                            batch.yeast(),
                            batch.priming(),
                            batch.fillingMethod(),
                            Optional.of(capped),
                            List.of(lot.withGauge(gauge)),
                            List.of(),
                            "")));
        }
        try (OpenCellar cellar = open()) {
            Mqtt3BlockingClient sensor = broker.sensor();
            LiveBroker.await(() -> {
                LiveBroker.send(sensor, "home/gauge", MqttQos.AT_LEAST_ONCE, "{\"p\": 14.5038}");
                clock.goOn(Duration.ofSeconds(70));
                work.beat();
                return !cellar.workspace().getCellar().batch("ale").readings().isEmpty();
            });
            Reading.Gauge read = (Reading.Gauge)
                    cellar.workspace().getCellar().batch("ale").readings().get(0);
            assertEquals(1, read.gaugeBar(), 0.001);
            assertEquals("live", read.gauge());
            assertEquals("brown", read.lotId());
        }
    }

    @Test
    void aClosedCellarListensNoMore() {
        broker.named(LiveBroker.PASSWORD).keepIn(settings);
        OpenCellar cellar = open();
        hear(cellar, broker.sensor(), "18.5", 18.5);
        cellar.close();
        assertEquals(0, work.running());
        assertFalse(cellar.sensors().stateProperty().get().brokerNamed());
    }
}
