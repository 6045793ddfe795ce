package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;

class BrokerTest {
    @TempDir
    Path settings;

    private void write(String mode, String text) throws IOException {
        Path file = settings.resolve("broker.properties");
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(mode));
    }

    private String fault() {
        return assertThrows(InvalidInput.class, () -> Broker.in(settings)).key();
    }

    @Test
    void itIsReadWhereItIsItsOwnersAloneAndNeverSaysThePassword() throws IOException {
        assertEquals(Optional.empty(), Broker.in(settings));
        write("rw-------", "host=broker.home\ntls=true\nuser=loft\npassword=secret\n");
        Broker broker = Broker.in(settings).orElseThrow();
        // 8883 and 1883 are the ports registered with IANA for MQTT with and without TLS.
        assertEquals(8883, broker.port());
        assertFalse(broker.toString().contains("secret"));
        write("rw-------", "host=broker.home\n");
        assertEquals(1883, Broker.in(settings).orElseThrow().port());
    }

    @Test
    void whatOthersMayReadOrNobodyCanUseIsRefused() throws IOException {
        write("rw-r-----", "host=broker.home\n");
        assertEquals("listen.fault.not-private", fault());
        write("rw-------", "host=broker.home\nport=many\n");
        assertEquals("listen.fault.settings", fault());
        write("rw-------", "port=1883\n");
        assertEquals("listen.fault.no-host", fault());
    }
}
