package undercroft.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
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
import undercroft.wording.Messages;

/** Against a broker of somebody else's making, on this machine. */
class ListenerTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    @TempDir
    Path scratch;

    private final HandClock clock = new HandClock(NOON);
    private LiveBroker broker;

    @BeforeEach
    void aBroker() {
        broker = LiveBroker.plain(scratch);
    }

    @AfterEach
    void end() {
        broker.stop();
    }

    private Listener listener(String password) {
        return listener(broker.named(password));
    }

    private Listener listener(Broker named) {
        Listener listener = new Listener(named, clock);
        Place loft = new Place(
                        "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK))
                .withTopic(Optional.of(new FollowedTopic("home/loft", "", TemperatureUnit.CELSIUS, -10, 45)));
        listener.follow(Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft));
        return listener;
    }

    private static void send(Mqtt3BlockingClient sensor, MqttQos qos, String text) {
        LiveBroker.send(sensor, "home/loft", qos, text);
    }

    /** Sends until it is heard: whether a subscription stands already cannot be seen from outside. */
    private void hearOne(Listener listener, Mqtt3BlockingClient sensor, String text, double expected) {
        LiveBroker.await(() -> {
            send(sensor, MqttQos.AT_MOST_ONCE, text);
            clock.goOn(Duration.ofSeconds(70));
            Listener.Flush flush = listener.flush();
            flush.kept();
            TimeSeries heard = flush.celsius().getOrDefault("loft", TimeSeries.empty());
            return !heard.isEmpty() && heard.lastValue() == expected;
        });
    }

    @Test
    void aReadingIsHeardAndAfterTheBrokerWasAwayTheNextOneToo() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            hearOne(listener, broker.sensor(), "18.5", 18.5);
            broker.stop();
            LiveBroker.await(() -> keys(listener).contains("listen.fault.away"));
            broker.start();
            LiveBroker.await(() -> !keys(listener).contains("listen.fault.away"));
            hearOne(listener, broker.sensor(), "19.5", 19.5);
        }
    }

    @Test
    void aFloodIsOneSampleAMinuteAndCounted() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            Mqtt3BlockingClient sensor = broker.sensor();
            hearOne(listener, sensor, "18", 18);
            for (int i = 0; i < 5_000; i++) {
                send(sensor, MqttQos.AT_MOST_ONCE, "18.2");
            }
            LiveBroker.await(() -> !listener.faults().isEmpty());
            assertEquals("listen.fault.crowded", listener.faults().get(0).key());
            clock.goOn(Duration.ofSeconds(70));
            assertTrue(listener.flush().celsius().get("loft").size() <= 2);
            assertTrue(listener.leftOut().size() == 1);
        }
    }

    @Test
    void whatAsksForAnAnswerGetsItWhenItIsKept() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            Mqtt3BlockingClient sensor = broker.sensor();
            hearOne(listener, sensor, "18", 18);
            for (int i = 0; i < 30; i++) {
                clock.goOn(Duration.ofSeconds(1));
                send(sensor, MqttQos.AT_LEAST_ONCE, String.valueOf(18 + i / 100.0));
            }
            // Brokers send some and wait for answers: all thirty come only when those before are kept and answered.
            LiveBroker.await(() -> {
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
            LiveBroker.await(() -> !listener.faults().isEmpty());
            InvalidInput fault = listener.faults().get(0);
            assertEquals("listen.fault.password", fault.key());
            assertTrue(!fault.toString().contains("wrong") && !fault.toString().contains(LiveBroker.PASSWORD));
        }
    }

    @Test
    void aPasswordThatIsChangedWhileTheBrokerIsAwayIsToldAtTheNextConnection() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            hearOne(listener, broker.sensor(), "18.5", 18.5);
            broker.stop();
            LiveBroker.await(() -> keys(listener).contains("listen.fault.away"));
            broker.changePassword("another one");
            broker.start();
            LiveBroker.await(() -> keys(listener).contains("listen.fault.password"));
            broker.stop();
            broker.changePassword(LiveBroker.PASSWORD);
            broker.start();
            LiveBroker.await(() -> keys(listener).isEmpty());
            hearOne(listener, broker.sensor(), "19.5", 19.5);
        }
    }

    @Test
    void aCertificateThatNobodyVouchesForIsRefusedAndOneThatIsNamedIsHeard() {
        broker.stop();
        broker = LiveBroker.encrypted(scratch);
        Broker unvouched = broker.named(LiveBroker.PASSWORD);
        try (Listener listener = listener(unvouched)) {
            LiveBroker.await(() -> keys(listener).contains("listen.fault.untrusted"));
        }
        Broker trusted = new Broker(
                unvouched.host(),
                unvouched.port(),
                true,
                Optional.of(broker.certificate()),
                unvouched.user(),
                unvouched.password());
        try (Listener listener = listener(trusted)) {
            hearOne(listener, broker.sensor(), "18.5", 18.5);
            assertFalse(keys(listener).contains("listen.fault.untrusted"), "" + keys(listener));
        }
    }

    /** The range given for the loft is -10 to 45 °C: 64.4 °F are 18 °C. */
    @Test
    void aSensorInFahrenheitByMistakeIsToldAndNothingOfItLogged() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            Mqtt3BlockingClient sensor = broker.sensor();
            hearOne(listener, sensor, "18", 18);
            send(sensor, MqttQos.AT_LEAST_ONCE, "64.4");
            LiveBroker.await(() -> keys(listener).contains("listen.fault.fahrenheit"));
            clock.goOn(Duration.ofSeconds(70));
            TimeSeries rest = listener.flush().celsius().getOrDefault("loft", TimeSeries.empty());
            assertTrue(rest.isEmpty() || rest.valueAt(rest.highestBetween(0, rest.size() - 1)) == 18);
        }
    }

    @Test
    void aTopicWithoutNumbersIsToldWithWhatCame() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            Mqtt3BlockingClient sensor = broker.sensor();
            hearOne(listener, sensor, "18", 18);
            send(sensor, MqttQos.AT_LEAST_ONCE, "online");
            LiveBroker.await(() -> keys(listener).contains("listen.fault.numberless"));
            assertTrue(Messages.english().fault(listener.faults().get(0)).contains("online"));
        }
    }

    @Test
    void theStateOfASensorSaysWhenItWasHeardAndWhatWasLeftOut() {
        try (Listener listener = listener(LiveBroker.PASSWORD)) {
            Mqtt3BlockingClient sensor = broker.sensor();
            hearOne(listener, sensor, "18", 18);
            Instant then = clock.instant();
            send(sensor, MqttQos.AT_LEAST_ONCE, "online");
            LiveBroker.await(() -> listener.states().get("loft").leftOut() >= 1);
            clock.goOn(Duration.ofHours(2));
            SensorState state = listener.states().get("loft");
            assertTrue(!state.heard().orElseThrow().isAfter(then));
            assertTrue(state.faults().stream().anyMatch(fault -> fault.key().equals("listen.fault.silent")));
            assertEquals(Optional.empty(), listener.brokerFault());
        }
    }
}
