package undercroft.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import com.hivemq.client.mqtt.mqtt3.Mqtt3ClientBuilder;
import io.moquette.broker.Server;
import io.moquette.broker.config.MemoryConfig;
import io.moquette.broker.security.IAuthenticator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.function.BooleanSupplier;
import undercroft.store.Broker;

/** A broker of somebody else's making, on this machine. */
public final class LiveBroker {
    public static final String USER = "loft";
    public static final String PASSWORD = "a pass word";

    private final Path scratch;
    private final boolean tls;
    private final int port;
    private final int plainPort;
    private String password = PASSWORD;
    private Server server;

    private LiveBroker(Path scratch, boolean tls) {
        this.scratch = scratch;
        this.tls = tls;
        this.port = freePort();
        this.plainPort = tls ? freePort() : port;
    }

    public static LiveBroker plain(Path scratch) {
        LiveBroker broker = new LiveBroker(scratch, false);
        broker.start();
        return broker;
    }

    /** One whose certificate it made itself; {@link #certificate} is what to trust. */
    static LiveBroker encrypted(Path scratch) {
        LiveBroker broker = new LiveBroker(scratch, true);
        keytool(
                scratch,
                "-genkeypair",
                "-alias",
                "broker",
                "-keyalg",
                "EC",
                "-dname",
                "CN=127.0.0.1",
                "-ext",
                "san=ip:127.0.0.1",
                "-validity",
                "9999");
        keytool(
                scratch,
                "-exportcert",
                "-alias",
                "broker",
                "-rfc",
                "-file",
                broker.certificate().toString());
        broker.start();
        return broker;
    }

    Path certificate() {
        return scratch.resolve("broker.pem");
    }

    private static void keytool(Path folder, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString()));
        command.addAll(List.of(arguments));
        command.addAll(List.of("-keystore", folder.resolve("keys.p12").toString(), "-storepass", "of the test"));
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(0, process.waitFor(), said);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private static int freePort() {
        try (ServerSocket free = new ServerSocket(0)) {
            return free.getLocalPort();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    public void start() {
        Properties lines = new Properties();
        lines.setProperty("host", "127.0.0.1");
        lines.setProperty("port", String.valueOf(plainPort));
        lines.setProperty("allow_anonymous", "false");
        lines.setProperty("persistence_enabled", "false");
        lines.setProperty("telemetry_enabled", "false");
        lines.setProperty("data_path", scratch.toString());
        if (tls) {
            lines.setProperty("ssl_port", String.valueOf(port));
            lines.setProperty("jks_path", scratch.resolve("keys.p12").toString());
            lines.setProperty("key_store_type", "pkcs12");
            lines.setProperty("key_store_password", "of the test");
            lines.setProperty("key_manager_password", "of the test");
        }
        IAuthenticator who = (client, user, given) ->
                USER.equals(user) && password.equals(new String(given, StandardCharsets.UTF_8));
        server = new Server();
        try {
            server.startServer(new MemoryConfig(lines), List.of(), null, who, null);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    public void stop() {
        server.stopServer();
    }

    /** From its next start on. */
    void changePassword(String changed) {
        password = changed;
    }

    /** As the user's settings name it. */
    public Broker named(String withPassword) {
        return new Broker("127.0.0.1", port, tls, Optional.empty(), Optional.of(USER), withPassword);
    }

    /** A sensor that is connected. */
    public Mqtt3BlockingClient sensor() {
        Mqtt3ClientBuilder builder = MqttClient.builder()
                .useMqttVersion3()
                .identifier("sensor")
                .serverHost("127.0.0.1")
                .serverPort(plainPort);
        Mqtt3BlockingClient sensor = builder.buildBlocking();
        sensor.connectWith()
                .simpleAuth()
                .username(USER)
                .password(password.getBytes(StandardCharsets.UTF_8))
                .applySimpleAuth()
                .send();
        return sensor;
    }

    public static void send(Mqtt3BlockingClient sensor, String topic, MqttQos qos, String text) {
        sensor.publishWith()
                .topic(topic)
                .qos(qos)
                .payload(text.getBytes(StandardCharsets.UTF_8))
                .send();
    }

    /** Waits for what happens on threads of the broker and its client. */
    public static void await(BooleanSupplier done) {
        for (int i = 0; i < 2400; i++) {
            if (done.getAsBoolean()) {
                return;
            }
            try {
                Thread.sleep(50);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        }
        fail("waited for two minutes");
    }
}
