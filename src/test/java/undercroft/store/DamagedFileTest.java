package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;
import undercroft.wording.English;

class DamagedFileTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final String[] SPLINTERS = {
        "null", "NaN", "-1", "1e999", "\"\"", "{}", "[]", "{", "]", ",", "\"", "9999999999", "true", "\\u0000"
    };

    @TempDir
    Path folder;

    @Test
    void twoThousandKindsOfDamageAreEachToldInASentenceAndLeftAsTheyAre() throws IOException {
        byte[] sound = RichCellar.json().getBytes(StandardCharsets.UTF_8);
        Random random = new Random(20_260_301);
        Path file = folder.resolve("cellar.json");
        int refused = 0;
        for (int i = 0; i < 2_000; i++) {
            byte[] damaged = damaged(sound, random, i % 4);
            Files.write(file, damaged);
            if (isRefused()) {
                refused++;
            }
            assertArrayEquals(damaged, Files.readAllBytes(file));
            assertTrue(Set.of("cellar.json", "cellar.lock")
                    .containsAll(Arrays.asList(folder.toFile().list())));
        }
        assertTrue(refused > 1_200, "most damage is found: " + refused);
    }

    private boolean isRefused() {
        boolean refused = false;
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.save(store.cellar());
        } catch (InvalidInput fault) {
            refused = true;
            assertTrue(fault.where().startsWith("cellar.json"), fault.getMessage());
            assertFalse(English.of(fault).isBlank());
        }
        long ofTheFile = CellarStore.faults(folder).stream()
                .filter(fault -> fault.where().startsWith("cellar.json"))
                .count();
        assertEquals(refused, ofTheFile > 0);
        return refused;
    }

    private static byte[] damaged(byte[] sound, Random random, int kind) {
        int at = random.nextInt(sound.length);
        if (kind == 0) {
            return Arrays.copyOf(sound, at);
        }
        byte[] damaged = sound.clone();
        if (kind == 1) {
            damaged[at] ^= (byte) (1 << random.nextInt(8));
            return damaged;
        }
        if (kind == 2) {
            for (int n = 0; n < 8; n++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            return damaged;
        }
        String text = new String(sound, StandardCharsets.UTF_8);
        int colon = text.indexOf(": ", random.nextInt(text.length() - 200));
        int end = text.indexOf('\n', colon);
        String value = SPLINTERS[random.nextInt(SPLINTERS.length)];
        String comma = text.charAt(end - 1) == ',' ? "," : "";
        return (text.substring(0, colon + 2) + value + comma + text.substring(end)).getBytes(StandardCharsets.UTF_8);
    }
}
