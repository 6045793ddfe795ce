package undercroft.store;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;

/**
 * Where live sensors are heard: a broker of MQTT, in {@code broker.properties} of the user's settings folder and never in a
 * cellar, which may be handed on.
 *
 * @param tls whether the line is encrypted
 * @param certificates PEM file of whom to trust; without one it is whom the Java runtime trusts
 */
public record Broker(
        String host, int port, boolean tls, Optional<Path> certificates, Optional<String> user, String password) {
    public static final String FILE = "broker.properties";

    private static final Pattern ADDRESS =
            Pattern.compile("(?:\\[(?<bare>[0-9a-fA-F:.%]+)]|(?<host>[^\\s:/@\\[\\]]+))(?::(?<port>\\d{1,5}))?");

    private static final int PLAIN_PORT = 1883;
    private static final int TLS_PORT = 8883;
    private static final Set<PosixFilePermission> OWNER =
            Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    public Broker {
        if (host.isBlank()) {
            throw new InvalidInput("host", "listen.fault.no-host");
        }
        Check.within("port", port, 1, 65_535);
    }

    /**
     * The one in a settings folder, where there is one.
     *
     * @throws InvalidInput when it cannot be read, or others than its owner may read it
     */
    public static Optional<Broker> in(Path settings) {
        Path file = settings.resolve(FILE);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        requirePrivate(file);
        byte[] bytes = new WholeFile(Disk.REAL).bytes(file, file.toString(), WholeFile.MOST_SMALL_BYTES);
        Properties lines = new Properties();
        try {
            lines.load(new StringReader(new String(bytes, StandardCharsets.UTF_8)));
            return Optional.of(of(lines));
        } catch (IOException | IllegalArgumentException unreadable) {
            throw new InvalidInput(file.toString(), "listen.fault.settings");
        } catch (InvalidInput fault) {
            throw fault.at(file + ": " + fault.where());
        }
    }

    private static Broker of(Properties lines) {
        boolean tls = Boolean.parseBoolean(lines.getProperty("tls", "false").strip());
        String port = lines.getProperty("port", String.valueOf(usualPort(tls)));
        return new Broker(
                lines.getProperty("host", "").strip(),
                Integer.parseInt(port.strip()),
                tls,
                Optional.ofNullable(lines.getProperty("certificates"))
                        .map(String::strip)
                        .map(Path::of),
                Optional.ofNullable(lines.getProperty("user")).map(String::strip),
                lines.getProperty("password", ""));
    }

    /** Keeps it in a settings folder, in a file that is its owner's alone. Blocks on a disk. */
    public void keepIn(Path settings) {
        Properties lines = new Properties();
        lines.setProperty("host", host);
        lines.setProperty("port", String.valueOf(port));
        lines.setProperty("tls", String.valueOf(tls));
        certificates.ifPresent(file -> lines.setProperty("certificates", file.toString()));
        user.ifPresent(name -> {
            lines.setProperty("user", name);
            lines.setProperty("password", password);
        });
        StringWriter text = new StringWriter();
        try {
            lines.store(text, null);
        } catch (IOException never) {
            throw new IllegalStateException(never);
        }
        AtomicFile files = new AtomicFile(Disk.REAL);
        files.makeFolders(settings, FILE);
        files.replacePrivately(
                settings.resolve(FILE),
                text.toString().getBytes(StandardCharsets.UTF_8),
                settings.resolve(FILE).toString());
    }

    /** Takes the one in a settings folder away; sensors are heard no more. Blocks on a disk. */
    public static void forgetIn(Path settings) {
        new AtomicFile(Disk.REAL).discard(settings.resolve(FILE));
    }

    /** Where it is, as a person types it: a name or address, and a port where it is not the usual one. */
    public String address() {
        String name = host.indexOf(':') < 0 ? host : "[" + host + "]";
        return port == usualPort(tls) ? name : name + ":" + port;
    }

    /**
     * A broker at a typed address.
     *
     * @param address such as {@code broker.home}, {@code 192.168.1.7:1884} or {@code [fd00::7]:8883}
     */
    public static Broker at(
            String address, boolean tls, Optional<Path> certificates, Optional<String> user, String password) {
        Matcher parts = ADDRESS.matcher(address.strip());
        if (!parts.matches()) {
            throw new InvalidInput("host", "listen.fault.no-host");
        }
        String host = parts.group("bare") == null ? parts.group("host") : parts.group("bare");
        int port = parts.group("port") == null ? usualPort(tls) : Integer.parseInt(parts.group("port"));
        try {
            return new Broker(host, port, tls, certificates, user, password);
        } catch (InvalidInput fault) {
            throw fault.at("host");
        }
    }

    private static int usualPort(boolean tls) {
        return tls ? TLS_PORT : PLAIN_PORT;
    }

    private static void requirePrivate(Path file) {
        try {
            if (!OWNER.containsAll(Files.getPosixFilePermissions(file, LinkOption.NOFOLLOW_LINKS))) {
                throw new InvalidInput(file.toString(), "listen.fault.not-private");
            }
        } catch (UnsupportedOperationException otherSystem) {
            // Where files have no such mode, the settings folder is its user's alone.
        } catch (IOException failure) {
            throw new InvalidInput(file.toString(), "listen.fault.settings");
        }
    }

    /** Without the password, so that no message or log tells it. */
    @Override
    public String toString() {
        return host + ":" + port;
    }
}
