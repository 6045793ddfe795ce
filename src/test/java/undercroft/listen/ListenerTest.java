package undercroft.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import io.moquette.broker.Server;
import io.moquette.broker.config.MemoryConfig;
import io.moquette.broker.security.IAuthenticator;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.HandClock;
import undercroft.store.Broker;

/** Against a broker of somebody else's making, on this machine. */
class ListenerTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final String USER = "loft";
    private static final String PASSWORD = "a pass word";

    @TempDir
    Path scratch;

    private final HandClock clock = new HandClock(NOON);
    private Server server;
    private int port;

    @BeforeEach
    void aBroker() throws IOException {
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        start();
    }

    @AfterEach
    void end() {
        server.stopServer();
    }

    private void start() throws IOException {
        Properties lines = new Properties();
        lines.setProperty("host", "127.0.0.1");
        lines.setProperty("port", String.valueOf(port));
        lines.setProperty("allow_anonymous", "false");
        lines.setProperty("persistence_enabled", "false");
        lines.setProperty("telemetry_enabled", "false");
        lines.setProperty("data_path", scratch.toString());
        IAuthenticator who = (client, user, password) ->
                USER.equals(user) && PASSWORD.equals(new String(password, StandardCharsets.UTF_8));
        server = new Server();
        server.startServer(new MemoryConfig(lines), List.of(), null, who, null);
    }

    private Listener listener(String password) {
        Listener listener = new Listener(
                new Broker("127.0.0.1", port, false, Optional.empty(), Optional.of(USER), password), clock);
        Place loft = new Place(
                        "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK))
                .withTopic(Optional.of(new FollowedTopic("home/loft", "", TemperatureUnit.CELSIUS, -10, 45)));
        listener.follow(Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft));
        return listener;
    }

    private Mqtt3BlockingClient sensor() {
        Mqtt3BlockingClient sensor = MqttClient.builder()
                .useMqttVersion3()
                .identifier("sensor")
                .serverHost("127.0.0.1")
                .serverPort(port)
                .buildBlocking();
        sensor.connectWith()
                .simpleAuth()
                .username(USER)
                .password(PASSWORD.getBytes(StandardCharsets.UTF_8))
                .applySimpleAuth()
                .send();
        return sensor;
    }

    private static void send(Mqtt3BlockingClient sensor, MqttQos qos, String text) {
        sensor.publishWith()
                .topic("home/loft")
                .qos(qos)
                .payload(text.getBytes(StandardCharsets.UTF_8))
                .send();
    }

    private static void await(BooleanSupplier done) {
        for (int i = 0; i < 600; i++) {
            if (done.getAsBoolean()) {
                return;
            }
            try {
                Thread.sleep(50);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        }
        fail("waited for half a minute");
    }

    /** Sends until it is heard: whether a subscription stands already cannot be seen from outside. */
    private void hearOne(Listener listener, Mqtt3BlockingClient sensor, String text, double expected) {
        await(() -> {
            send(sensor, MqttQos.AT_MOST_ONCE, text);
            clock.goOn(Duration.ofSeconds(70));
            Listener.Flush flush = listener.flush();
            flush.kept();
            TimeSeries heard = flush.celsius().getOrDefault("loft", TimeSeries.empty());
            return !heard.isEmpty() && heard.lastValue() == expected;
        });
    }

    @Test
    void aReadingIsHeardAndAfterTheBrokerWasAwayTheNextOneToo() throws IOException {
        try (Listener listener = listener(PASSWORD)) {
            hearOne(listener, sensor(), "18.5", 18.5);
            server.stopServer();
            await(() -> keys(listener).contains("listen.fault.away"));
            start();
            await(() -> !keys(listener).contains("listen.fault.away"));
            hearOne(listener, sensor(), "19.5", 19.5);
        }
    }

    @Test
    void aFloodIsOneSampleAMinuteAndCounted() {
        try (Listener listener = listener(PASSWORD)) {
            Mqtt3BlockingClient sensor = sensor();
            hearOne(listener, sensor, "18", 18);
            for (int i = 0; i < 5_000; i++) {
                send(sensor, MqttQos.AT_MOST_ONCE, "18.2");
            }
            await(() -> !listener.faults().isEmpty());
            assertEquals("listen.fault.crowded", listener.faults().get(0).key());
            clock.goOn(Duration.ofSeconds(70));
            assertTrue(listener.flush().celsius().get("loft").size() <= 2);
            assertTrue(listener.leftOut().size() == 1);
        }
    }

    @Test
    void whatAsksForAnAnswerGetsItWhenItIsKept() {
        try (Listener listener = listener(PASSWORD)) {
            Mqtt3BlockingClient sensor = sensor();
            hearOne(listener, sensor, "18", 18);
            for (int i = 0; i < 30; i++) {
                clock.goOn(Duration.ofSeconds(1));
                send(sensor, MqttQos.AT_LEAST_ONCE, String.valueOf(18 + i / 100.0));
            }
            // Brokers send some and wait for answers: all thirty come only when those before are kept and answered.
            await(() -> {
                Listener.Flush flush = listener.flush();
                flush.kept();
                return heard(listener) >= 31;
            });
        }
    }

    private static List<String> keys(Listener listener) {
        return listener.faults().stream().map(InvalidInput::key).toList();
    }

    private static long heard(Listener listener) {
        return listener.counts().get("loft").taken()
                + listener.counts().get("loft").crowded();
    }

    @Test
    void aWrongPasswordIsToldAndTriedAgain() {
        try (Listener listener = listener("wrong")) {
            await(() -> !listener.faults().isEmpty());
            InvalidInput fault = listener.faults().get(0);
            assertEquals("listen.fault.password", fault.key());
            assertTrue(!fault.toString().contains("wrong") && !fault.toString().contains(PASSWORD));
        }
    }
}
