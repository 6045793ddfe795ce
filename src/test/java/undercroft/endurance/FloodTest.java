package undercroft.endurance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.TemperatureUnit;
import undercroft.listen.LiveBroker;
import undercroft.series.TimeSeries;
import undercroft.session.watch.Watch;
import undercroft.store.CellarStore;
import undercroft.wording.Messages;

/** A sensor gone mad: a thousand messages a second for more than a minute, over a real broker and the real clock. */
@Tag("endurance")
class FloodTest {
    private static final int A_SECOND = 1_000;
    private static final int SECONDS = 130;
    private static final long MOST_GROWTH_BYTES = 32L << 20;

    @TempDir
    Path scratch;

    private static long heapBytes() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    @Test
    void theHeapStaysFlatEveryMinuteIsCompleteAndWhatIsLeftOutIsTold() {
        Path folder = scratch.resolve("cellar");
        Place loft = new Place(
                        "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK))
                .withTopic(Optional.of(new FollowedTopic("home/loft", "", TemperatureUnit.CELSIUS, -10, 45)));
        Clock clock = Clock.systemUTC();
        CellarStore.create(folder, Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft), clock, "test")
                .close();
        LiveBroker broker = LiveBroker.plain(scratch);
        List<String> said = new CopyOnWriteArrayList<>();
        try (Watch watch = new Watch(
                folder,
                Optional.empty(),
                Optional.of(broker.named(LiveBroker.PASSWORD)),
                clock,
                Messages.english(),
                said::add,
                said::add)) {
            watch.round();
            Mqtt3BlockingClient sensor = broker.sensor();
            long before = heapBytes();
            Instant begun = clock.instant();
            for (int second = 0; second < SECONDS; second++) {
                for (int i = 0; i < A_SECOND; i++) {
                    LiveBroker.send(sensor, "home/loft", MqttQos.AT_MOST_ONCE, String.valueOf(18 + i % 10 / 100.0));
                }
                long wait = begun.plusSeconds(second + 1L).toEpochMilli() - clock.millis();
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(Math.max(0, wait)));
                if (watch.isDue()) {
                    watch.save();
                }
            }
            LiveBroker.await(() -> {
                watch.save();
                return minutes(folder) >= SECONDS / 60;
            });
            watch.round();
            long growth = heapBytes() - before;
            assertTrue(Math.abs(minutes(folder) - SECONDS / 60) <= 1, "a sample a minute");
            assertTrue(said.stream().anyMatch(line -> line.contains("more comes on home/loft")), "" + said);
            assertTrue(growth < MOST_GROWTH_BYTES, "grew by " + growth / (1 << 20) + " MB");
        } finally {
            broker.stop();
        }
    }

    private static int minutes(Path folder) {
        return CellarStore.temperatures(folder, CellarStore.read(folder))
                .celsius()
                .getOrDefault("loft", TimeSeries.empty())
                .size();
    }
}
