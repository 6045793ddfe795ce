package undercroft.listen;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.MqttClientSslConfig;
import com.hivemq.client.mqtt.MqttClientState;
import com.hivemq.client.mqtt.MqttGlobalPublishFilter;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3AsyncClient;
import com.hivemq.client.mqtt.mqtt3.Mqtt3ClientBuilder;
import com.hivemq.client.mqtt.mqtt3.exceptions.Mqtt3ConnAckException;
import com.hivemq.client.mqtt.mqtt3.exceptions.Mqtt3SubAckException;
import com.hivemq.client.mqtt.mqtt3.message.publish.Mqtt3Publish;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.net.ssl.SSLException;
import javax.net.ssl.TrustManagerFactory;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.SensorTopic;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.series.TimeSeries;
import undercroft.store.Broker;

/**
 * Hears the topics that the places of a cellar and its gauge bottles follow. It connects by itself, again and again with growing pauses, and a
 * message that asks for an answer gets it only after {@link Flush#kept}, when its reading is on a disk. Each connection
 * begins anew: a sensor's plain number does not say when it was measured, so what a broker kept meanwhile is of no use.
 */
public final class Listener implements AutoCloseable {
    private static final long FIRST_PAUSE_SECONDS = 1;
    private static final long LONGEST_PAUSE_SECONDS = 120;
    /** Many brokers send twenty and wait. */
    private static final int MOST_UNANSWERED = 10;

    private final Broker broker;
    private final Clock clock;
    private final Mqtt3AsyncClient client;
    private final Map<String, Ear> ears = new LinkedHashMap<>();
    private final Map<GaugeBottle, Ear> gauges = new LinkedHashMap<>();
    private final List<Mqtt3Publish> unanswered = new ArrayList<>();
    private InvalidInput fault;

    /**
     * Begins to connect.
     *
     * @throws InvalidInput when the certificates named cannot be read
     */
    public Listener(Broker broker, Clock clock) {
        this.broker = broker;
        this.clock = clock;
        Mqtt3ClientBuilder builder = MqttClient.builder()
                .useMqttVersion3()
                .identifier("undercroft-" + UUID.randomUUID().toString().substring(0, 8))
                .serverHost(broker.host())
                .serverPort(broker.port())
                .automaticReconnect()
                .initialDelay(FIRST_PAUSE_SECONDS, TimeUnit.SECONDS)
                .maxDelay(LONGEST_PAUSE_SECONDS, TimeUnit.SECONDS)
                .applyAutomaticReconnect()
                .addConnectedListener(connected -> connected())
                .addDisconnectedListener(lost -> lost(lost.getCause()));
        if (broker.tls()) {
            builder = builder.sslConfig(trusting(broker));
        }
        if (broker.user().isPresent()) {
            // With the client, not with its first connection: the next ones would come without.
            builder = builder.simpleAuth()
                    .username(broker.user().get())
                    .password(broker.password().getBytes(StandardCharsets.UTF_8))
                    .applySimpleAuth();
        }
        client = builder.buildAsync();
        client.publishes(MqttGlobalPublishFilter.ALL, this::arrived, Runnable::run, true);
        var unused = client.connectWith().cleanSession(true).send();
    }

    private static MqttClientSslConfig trusting(Broker broker) {
        if (broker.certificates().isEmpty()) {
            return MqttClientSslConfig.builder().build();
        }
        try {
            byte[] pem = Files.readAllBytes(broker.certificates().get());
            KeyStore trusted = KeyStore.getInstance(KeyStore.getDefaultType());
            trusted.load(null, null);
            for (Certificate each :
                    CertificateFactory.getInstance("X.509").generateCertificates(new ByteArrayInputStream(pem))) {
                trusted.setCertificateEntry("trusted-" + trusted.size(), each);
            }
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(trusted);
            return MqttClientSslConfig.builder().trustManagerFactory(trust).build();
        } catch (IOException | GeneralSecurityException unreadable) {
            throw new InvalidInput(broker.certificates().get().toString(), "listen.fault.certificates");
        }
    }

    /** Follows what the places and gauge bottles of a cellar follow now. */
    public synchronized void follow(Cellar cellar) {
        List<Ear> before = all();
        Map<String, Ear> placesBefore = Map.copyOf(ears);
        Map<GaugeBottle, Ear> gaugesBefore = Map.copyOf(gauges);
        ears.clear();
        gauges.clear();
        for (Place place : cellar.places()) {
            place.topic()
                    .ifPresent(topic -> ears.put(place.id(), ear(placesBefore.get(place.id()), place.name(), topic)));
        }
        Instant now = clock.instant();
        for (Batch batch : cellar.batches()) {
            for (Lot lot : batch.lots()) {
                GaugeBottle bottle = new GaugeBottle(batch.id(), lot.id());
                lot.gauge()
                        .filter(gauge -> gauge.isReadAt(now))
                        .flatMap(FittedGauge::topic)
                        .ifPresent(topic -> gauges.put(bottle, ear(gaugesBefore.get(bottle), batch.name(), topic)));
            }
        }
        List<Ear> after = all();
        for (Ear left : before) {
            if (after.stream()
                    .noneMatch(ear -> ear.topic().name().equals(left.topic().name()))) {
                var unused = client.unsubscribeWith()
                        .topicFilter(left.topic().name())
                        .send();
            }
        }
        if (client.getState() == MqttClientState.CONNECTED) {
            after.stream().filter(ear -> !before.contains(ear)).forEach(this::subscribe);
        }
    }

    /** Whether a cellar has anything to hear. */
    public static boolean isWanted(Cellar cellar) {
        return cellar.places().stream().anyMatch(place -> place.topic().isPresent())
                || cellar.batches().stream()
                        .flatMap(batch -> batch.lots().stream())
                        .flatMap(lot -> lot.gauge().stream())
                        .anyMatch(gauge ->
                                gauge.topic().isPresent() && gauge.opened().isEmpty());
    }

    private Ear ear(Ear known, String where, SensorTopic topic) {
        return known != null && known.topic().equals(topic) ? known : new Ear(where, topic, clock.instant());
    }

    private List<Ear> all() {
        return Stream.concat(ears.values().stream(), gauges.values().stream()).toList();
    }

    private void subscribe(Ear ear) {
        var unused = client.subscribeWith()
                .topicFilter(ear.topic().name())
                .qos(MqttQos.AT_LEAST_ONCE)
                .send()
                .whenComplete((answer, failure) -> answered(ear, failure instanceof Mqtt3SubAckException));
    }

    private synchronized void answered(Ear ear, boolean refused) {
        ear.refused(refused);
    }

    private synchronized void connected() {
        fault = null;
        all().forEach(this::subscribe);
    }

    private synchronized void lost(Throwable cause) {
        unanswered.clear();
        fault = new InvalidInput(broker.toString(), reason(cause));
    }

    private static String reason(Throwable cause) {
        for (Throwable each = cause; each != null; each = each.getCause()) {
            if (each instanceof Mqtt3ConnAckException) {
                return "listen.fault.password";
            }
            if (each instanceof SSLException || each instanceof GeneralSecurityException) {
                return "listen.fault.untrusted";
            }
        }
        return "listen.fault.away";
    }

    private synchronized void arrived(Mqtt3Publish message) {
        Instant now = clock.instant();
        String topic = message.getTopic().toString();
        all().stream()
                .filter(ear -> ear.topic().name().equals(topic))
                .forEach(ear -> ear.hear(message.getPayloadAsBytes(), message.isRetain(), now));
        if (message.getQos() != MqttQos.AT_MOST_ONCE) {
            unanswered.add(message);
        }
    }

    /** Whether something should be saved now: a minute is complete, or a broker waits for answers. */
    public synchronized boolean isDue() {
        Instant now = clock.instant();
        return unanswered.size() >= MOST_UNANSWERED || all().stream().anyMatch(ear -> ear.isDue(now));
    }

    /** What is to be saved, and whom to tell when it is. */
    public final class Flush {
        private final Instant at;
        private final Map<String, TimeSeries> celsius = new LinkedHashMap<>();
        private final Map<GaugeBottle, TimeSeries> bars = new LinkedHashMap<>();
        private final List<Mqtt3Publish> toAnswer;

        private Flush(boolean all) {
            at = clock.instant();
            toAnswer = List.copyOf(unanswered);
            boolean open = all || !toAnswer.isEmpty();
            ears.forEach((placeId, ear) -> put(placeId, ear.samples(at, open), celsius));
            gauges.forEach((bottle, ear) -> put(bottle, ear.samples(at, open), bars));
        }

        private static <K> void put(K key, TimeSeries samples, Map<K, TimeSeries> heard) {
            if (!samples.isEmpty()) {
                heard.put(key, samples);
            }
        }

        /** By place, °C. */
        public Map<String, TimeSeries> celsius() {
            return Map.copyOf(celsius);
        }

        /** Of gauge bottles, bar. */
        public Map<GaugeBottle, TimeSeries> bars() {
            return Map.copyOf(bars);
        }

        /** It is on a disk: messages are answered and their readings let go. */
        public void kept() {
            synchronized (Listener.this) {
                all().forEach(ear -> ear.kept(at));
                for (Mqtt3Publish message : toAnswer) {
                    if (unanswered.remove(message)) {
                        message.acknowledge();
                    }
                }
            }
        }
    }

    /** All that is heard and not saved yet. */
    public synchronized Flush flush() {
        return new Flush(false);
    }

    /** The same with the minute that is not over yet: nothing more will be heard. */
    public synchronized Flush lastFlush() {
        return new Flush(true);
    }

    /** What a person should know: the broker first, then each place. */
    public synchronized List<InvalidInput> faults() {
        List<InvalidInput> all = new ArrayList<>();
        Optional.ofNullable(fault).ifPresent(all::add);
        Instant now = clock.instant();
        all().forEach(ear -> all.addAll(ear.faults(now)));
        return all;
    }

    /** What stands between this and the broker; empty while they are connected, or have not met yet. */
    public synchronized Optional<InvalidInput> brokerFault() {
        return Optional.ofNullable(fault);
    }

    /** How it stands with the sensor of each place that has one. */
    public synchronized Map<String, SensorState> states() {
        Instant now = clock.instant();
        Map<String, SensorState> all = new LinkedHashMap<>();
        ears.forEach((placeId, ear) -> all.put(placeId, ear.state(now)));
        return all;
    }

    /** What a person should know of the gauges. */
    public synchronized List<InvalidInput> gaugeFaults() {
        Instant now = clock.instant();
        return gauges.values().stream().flatMap(ear -> ear.faults(now).stream()).toList();
    }

    /** How many messages were taken, and how many left out and why, of each place where more were left out since. */
    public synchronized List<Phrase> leftOut() {
        return all().stream().flatMap(ear -> ear.leftOut().stream()).toList();
    }

    synchronized Map<String, Ear.Counts> counts() {
        Map<String, Ear.Counts> all = new LinkedHashMap<>();
        ears.forEach((placeId, ear) -> all.put(placeId, ear.counts()));
        return all;
    }

    @Override
    public void close() {
        var unused = client.disconnect();
    }
}
