package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.store.CellarStore;

class WatchCommandTest {
    @TempDir
    Path scratch;

    @Test
    void oneLookPublishesAndLeavesTheCellarFree() throws IOException {
        Path folder = scratch.resolve("cellar");
        CellarStore.create(folder, Cellar.empty("Vault", ZoneOffset.UTC), Clock.systemUTC(), "test")
                .close();
        Path page = Files.createDirectory(scratch.resolve("page"));
        Terminal done = Terminal.run(scratch, "watch", folder.toString(), "--publish", page.toString(), "--once");
        assertEquals(0, done.code(), done.err());
        assertEquals("", done.err());
        assertTrue(done.out().contains(folder.toString()), done.out());
        assertTrue(Files.readString(page.resolve("index.html")).contains("Vault"));
        CellarStore.open(folder, Clock.systemUTC(), "test").close();
        Terminal none = Terminal.run(scratch, "watch", scratch.resolve("none").toString(), "--once");
        assertEquals(2, none.code());
        assertEquals(1, none.err().lines().count(), none.err());
    }
}
